import { all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { DISTANCE } from "../contested.ts";
import { topic } from "../topic.ts";

/** A radiant or fan heater in a room with a bath or shower. */
export const bathHeaterInReach = topic({
  id: "bath-heater-in-reach",
  title: "Heater in reach of a bath or shower",
  group: "baths",
  items: ["bathrooms.equipment", "fire.hot-surfaces"],
  facts: {
    reach: ranked({
      asks: "Can somebody using the bath or shower reach the heater?",
      effort: "glance",
      values: {
        out: "nobody in the bath or shower can reach the heater",
        stretch: "a person who stands up in the bath can just reach the heater",
        easy: "a person in the bath or shower can easily reach the heater",
      },
    }),
    "live-element": yesNo({
      asks: "Does a finger or a wet towel get to a bare element through its guard?",
      effort: "glance",
      yes: "a bare element can be touched through the guard",
      no: "no bare element can be touched",
      worse: "yes",
    }),
    suited: yesNo({
      asks: "Is the heater fixed and made for a bathroom, with a cord or remote switch?",
      effort: "glance",
      yes: "the heater is fixed and made for a bathroom",
      no: "the heater is portable or not made for a bathroom",
      worse: "no",
    }),
  },
  contested: { distance: DISTANCE },
  paths: [
    {
      id: "touches-element",
      hazard: "contact-with-live-parts",
      route: "a wet person touches the element, or water runs into the heater",
      exists: any(yes("live-element"), all(is("suited", "no"), is("reach", "stretch", "easy"))),
      layers: [
        {
          id: "guard",
          provision: "barrier-or-enclosure",
          words: "the guard and casing of the heater",
          gone: yes("live-element"),
          sound: NEVER,
          regulations: ["416.2.1", "701.512.2"],
        },
        {
          id: "distance",
          provision: "out-of-reach",
          words: "distance from the bath or shower",
          gone: any(is("reach", "easy"), all(yes("live-element"), held("distance", "does-not-count"))),
          sound: NEVER,
          regulations: ["701.512.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("suited", "no"), yes("live-element")),
      words: "the heater is not of a kind for the room",
      regulations: ["701.512.2", "701.55", "512.2.1"],
    },
  ],
  client: {
    C1: [
      says(
        "A heater by the bath has live parts that wet hands can touch. This could kill. Keep away. Turn it off at the fuse box and leave it off.",
        is("reach", "stretch", "easy"),
      ),
      "A bathroom heater has live parts that can be touched. This could kill. Keep away. Turn it off at the fuse box and leave it off.",
    ],
    C2: [
      says(
        "Live parts of a bathroom heater can be touched. It could give a shock. Turn it off and have it changed soon.",
        yes("live-element"),
      ),
      says(
        "A heater can be reached from the bath and is not made for wet rooms. It could give a shock. Change it soon.",
        all(is("reach", "easy"), no("suited")),
      ),
    ],
    C3: "A heater is not the right type for a bathroom. It is out of easy reach, so it is not a danger now. A better one is advised.",
    FI: unsure("We could not find out if a heater near the bath is safe. This must be looked at soon.", [
      "reach",
      "live-element",
      "suited",
    ]),
    none: "The bathroom heater is safe.",
  },
  remedies: [
    { words: "Move the heater out of reach.", changes: { reach: "out" } },
    {
      words: "Fit a heater made for bathrooms out of reach of the bath.",
      changes: { reach: "out", "live-element": "no", suited: "yes" },
    },
  ],
  examples: [
    {
      name: "radiant heater with an open element over the foot of the bath",
      facts: { reach: "easy", "live-element": true, suited: false },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach of a wet person",
    },
    {
      name: "heater of the living room screwed to the wall in reach",
      facts: { reach: "easy", "live-element": false, suited: false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: one step from danger",
    },
    {
      name: "the same across a large room",
      facts: { reach: "out", "live-element": false, suited: false },
      possible: ["C3"],
      source: "trade practice: departure without a route",
    },
    {
      name: "heater made for bathrooms",
      facts: { reach: "stretch", "live-element": false, suited: true },
      possible: ["none"],
      source: "regulation: fixed heating made for the place",
    },
    {
      name: "marking out of sight",
      facts: { reach: "easy", "live-element": false },
      possible: ["none", "C2"],
      missing: ["suited"],
      source: "union over the marking",
    },
  ],
});
