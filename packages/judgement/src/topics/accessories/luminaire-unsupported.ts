import { is, NEVER, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A luminaire, fan or other heavy thing that is not held up as it should be. */
export const luminaireUnsupported = topic({
  id: "luminaire-unsupported",
  title: "Luminaire or fan badly held up",
  group: "accessories",
  items: ["accessories.luminaires", "accessories.fixed-equipment"],
  facts: {
    fixing: ranked({
      asks: "How is it held up?",
      effort: "glance",
      values: {
        firm: "it is firmly fixed to something that carries it",
        "part-loose": "a fixing is missing or loose and the others hold",
        "by-flex": "it hangs by its flex or a cord grip and is heavier than they are made for",
        falling: "it is coming down or hangs by its cores",
      },
    }),
    "over-people": yesNo({
      asks: "Are people under it, or beds, desks or a stair?",
      effort: "glance",
      yes: "people are under it",
      no: "people are seldom under it",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "falls",
      hazard: "mechanical-movement",
      route: "it falls on somebody, or its cores pull out and become bare",
      exists: is("fixing", "by-flex", "falling"),
      layers: [
        {
          id: "what-holds",
          provision: "surroundings",
          words: "what still holds it up",
          gone: is("fixing", "falling"),
          sound: NEVER,
          regulations: ["559.5.2", "526.6"],
        },
        {
          id: "nobody-under",
          provision: "surroundings",
          words: "nobody being under it",
          gone: yes("over-people"),
          sound: NEVER,
        },
      ],
    },
  ],
  departures: [
    {
      when: is("fixing", "part-loose", "by-flex", "falling"),
      words: "it is not held up as it should be",
      regulations: ["134.1.1", "559.5.2"],
    },
  ],
  client: {
    C1: "A light or fan is about to fall on people. Keep away from it. Have it made safe now.",
    C2: "A light or fan is not held up well. It could fall, or its wires could pull out. Have it fixed soon.",
    C3: "A light or fan is not held up well. It is not a danger now. It should be fixed tight.",
    FI: [
      unsure("We could not see how a light or fan is held up. This must be looked at soon.", ["fixing"]),
      unsure("We could not find out if a light or fan could fall on people. This must be looked at soon.", [
        "over-people",
      ]),
    ],
    none: "The lights and fans are held up well.",
  },
  remedies: [
    {
      words: "Fix it to something that carries its weight and remake its connections.",
      changes: { fixing: "firm" },
    },
  ],
  examples: [
    {
      name: "heavy glass shade hung by its flex over a table",
      facts: { fixing: "by-flex", "over-people": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: weight on the connections",
    },
    {
      name: "ceiling light, one of two screws missing",
      facts: { fixing: "part-loose", "over-people": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: insecure fixing",
    },
    {
      name: "batten light hanging by its cores over a stair",
      facts: { fixing: "falling", "over-people": true },
      possible: ["C1"],
      source: "trade practice: it may fall at any time",
    },
    {
      name: "the same in a loft",
      facts: { fixing: "falling", "over-people": false },
      possible: ["C2"],
      source: "trade practice: nobody under it",
    },
    {
      name: "fixing hidden by a canopy",
      facts: { "over-people": true },
      possible: ["none", "C3", "C2", "C1"],
      missing: ["fixing"],
      source: "union over fixings",
    },
  ],
});
