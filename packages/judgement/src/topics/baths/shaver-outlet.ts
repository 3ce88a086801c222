import { all, any, is, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A shaver outlet in a room with a bath or shower. */
export const shaverOutlet = topic({
  id: "shaver-outlet",
  title: "Shaver outlet in a bathroom",
  group: "baths",
  items: ["bathrooms.equipment"],
  facts: {
    isolating: yesNo({
      asks: "Is it an isolating shaver supply unit (BS EN 61558-2-5, or its forerunner BS 3535)?",
      effort: "glance",
      yes: "it is an isolating shaver supply unit",
      no: "it is not an isolating shaver supply unit",
      worse: "no",
    }),
    place: ranked({
      asks: "Where is it?",
      effort: "glance",
      values: {
        far: "it is 2.5 m or more from zone 1",
        near: "it is outside the zones and nearer to zone 1 than 2.5 m",
        "zone-2": "it is in zone 2",
        "zone-1": "it is in zone 1",
      },
    }),
    sprayed: yesNo({
      asks: "Is a shower likely to spray it?",
      effort: "glance",
      yes: "a shower is likely to spray it",
      no: "no shower is likely to spray it",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "shock-from-shaver",
      hazard: "contact-with-live-parts",
      route: "a wet person touches a live part of what is plugged in, and current flows to earth",
      exists: any(all(no("isolating"), is("place", "near", "zone-2", "zone-1")), is("place", "zone-1")),
      layers: [
        oneEventAway("appliance", "insulation", "the insulation and casing of the appliance", ["701.512.3", "416.1"]),
      ],
    },
  ],
  departures: [
    {
      when: any(no("isolating"), is("place", "zone-1"), all(is("place", "zone-2"), yes("sprayed"))),
      words: "the outlet is not of the kind, or not in a place, that a bathroom allows",
      regulations: ["701.512.3"],
    },
  ],
  client: {
    C2: "The shaver socket is not safe so near the bath or shower. It could give a shock. Have it changed soon.",
    C3: "The shaver socket is not quite right for a bathroom. It is not a danger now. A better one is advised.",
    FI: unsure("We could not find out if the shaver socket is a safe type. This must be looked at soon.", [
      "isolating",
      "place",
    ]),
    none: "The shaver socket is a safe type in a good place.",
  },
  remedies: [
    {
      words: "Replace it by an isolating shaver supply unit where no shower sprays it.",
      changes: { isolating: "yes", place: "near", sprayed: "no" },
    },
  ],
  examples: [
    {
      name: "not an isolating unit, zone 2",
      facts: { isolating: false, place: "zone-2" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: not isolated from earth",
    },
    {
      name: "isolating unit, zone 2, away from the spray",
      facts: { isolating: true, place: "zone-2", sprayed: false },
      possible: ["none"],
      source: "regulation: allowed in zone 2 where spray is unlikely",
    },
    {
      name: "isolating unit, zone 2, sprayed",
      facts: { isolating: true, place: "zone-2", sprayed: true },
      possible: ["C3"],
      source: "regulation: allowed in zone 2 only where spray is unlikely",
    },
    {
      name: "not an isolating unit, across a large room",
      facts: { isolating: false, place: "far", sprayed: false },
      possible: ["C3"],
      source: "trade practice: far from the wet",
    },
    {
      name: "kind not found out, zone 2",
      facts: { place: "zone-2", sprayed: false },
      possible: ["none", "C2"],
      missing: ["isolating"],
      source: "union over kinds",
    },
  ],
});
