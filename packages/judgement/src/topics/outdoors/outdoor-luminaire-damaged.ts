import { all, any, held, is, NEVER, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { DISTANCE } from "../contested.ts";
import { topic } from "../topic.ts";

/** A light outdoors at mains voltage that is broken, open or hanging. */
export const outdoorLuminaireDamaged = topic({
  id: "outdoor-luminaire-damaged",
  title: "Damaged outdoor light at mains voltage",
  group: "outdoors",
  items: ["outdoors.weather", "accessories.luminaires"],
  facts: {
    state: ranked({
      asks: "What is wrong with the light?",
      effort: "glance",
      values: {
        whole: "the light is whole and fixed",
        weathered: "the light is brittle, rusting or loose, and closed",
        open: "its glass, cover or seal is broken or missing, or it hangs by its cable",
        "live-from-steps": "live metal of the light can be touched from steps",
        "live-in-reach": "live metal of the light can be touched from where people stand",
      },
    }),
    water: yesNo({
      asks: "Is there water, rust or dirt washed into it?",
      effort: "glance",
      yes: "water has got into the light",
      no: "no water has got into the light",
      worse: "yes",
    }),
  },
  contested: { distance: DISTANCE },
  paths: [
    {
      id: "water-gets-in",
      hazard: "contact-with-live-parts",
      route: "rain gets into the light and makes what somebody touches live",
      exists: any(is("state", "open", "live-from-steps", "live-in-reach"), yes("water")),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "what is left of the body of the light",
          gone: NEVER,
          sound: NEVER,
          regulations: ["512.2.1", "522.3.1"],
        },
      ],
    },
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal of the light",
      exists: is("state", "live-from-steps", "live-in-reach"),
      layers: [
        {
          id: "height",
          provision: "out-of-reach",
          words: "height above where people stand",
          gone: any(
            is("state", "live-in-reach"),
            all(is("state", "live-from-steps"), held("distance", "does-not-count")),
          ),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("state", "weathered", "open", "live-from-steps", "live-in-reach"),
      words: "the light no longer stands up to the weather",
      regulations: ["512.2.1", "134.1.1"],
    },
  ],
  client: {
    C1: "An outdoor light is broken. Live metal shows. It can kill. Keep away from it. Have it made safe now.",
    C2: [
      says(
        "Live metal of an outdoor light can be touched from steps. Leave it off until it is changed.",
        is("state", "live-from-steps"),
      ),
      "Rain gets, or can get, into an outdoor light. It could give a shock. Leave it off until it is changed.",
    ],
    C3: "An outdoor light is worn. It is not a danger now. A new one is advised.",
    FI: unsure("We could not get close enough to an outdoor light to see if it is safe. This must be looked at soon.", [
      "state",
      "water",
    ]),
    none: "The outdoor lights are whole.",
  },
  remedies: [
    {
      words: "Replace the broken part or the light, and dry or remake its connections.",
      changes: { state: "whole", water: "no" },
    },
  ],
  examples: [
    {
      name: "cracked glass, rain gets in",
      facts: { state: "open", water: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: water entry",
    },
    {
      name: "bollard light knocked over, live cores in reach",
      facts: { state: "live-in-reach" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "rusting and closed",
      facts: { state: "weathered", water: false },
      possible: ["C3"],
      source: "trade practice: it will need replacing",
    },
    {
      name: "lamp too high to see into",
      facts: { state: "weathered" },
      possible: ["C3", "C2"],
      missing: ["water"],
      source: "union over what steps would show",
    },
  ],
});
