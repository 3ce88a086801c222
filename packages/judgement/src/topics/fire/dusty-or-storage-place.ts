import { all, any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Places where what is kept or worked catches fire easily: wood shops, barns, paper stores. */
export const dustyOrStoragePlace = topic({
  id: "dusty-or-storage-place",
  title: "Equipment where dust, straw or stock can burn",
  group: "fire",
  items: ["fire.contents"],
  facts: {
    dust: ranked({
      asks: "How much dust or stock lies on and round the equipment?",
      effort: "glance",
      values: {
        clean: "the place is kept clean and stock stands clear",
        some: "dust or stock lies near the equipment",
        covering: "dust or stock covers the equipment",
      },
    }),
    enclosure: yesNo({
      asks: "Do enclosures keep dust out as asked there (IP5X, IP4X without dust)?",
      effort: "glance",
      yes: "enclosures keep out dust as asked",
      no: "enclosures let dust in",
      worse: "no",
    }),
    "rcd-300ma": yesNo({
      asks: "Are the circuits behind a working RCD of 300 mA or less (or a mineral-insulated or busbar system)?",
      effort: "glance",
      yes: "the circuits are behind a working RCD of 300 mA or less, or need none",
      no: "the circuits lack a working RCD of 300 mA or less",
      worse: "no",
    }),
    heat: yesNo({
      asks: "Is there any sign of heat or scorching?",
      effort: "glance",
      yes: "there are signs of heat or scorching",
      no: "there is no sign of heat",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "dust-burns",
      hazard: "burns-or-fire",
      route: "heat or a leakage current sets dust or stock alight",
      exists: is("dust", "some", "covering"),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "enclosures that keep dust away from what gets hot",
          gone: any(all(no("enclosure"), is("dust", "covering")), is("heat", "yes")),
          sound: NEVER,
          regulations: ["422.3.3"],
        },
        oneEventAway("cool", "thermal-protection", "surfaces that stay cool", ["422.3.2"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 300 mA or less against leakage to earth",
          gone: any(no("rcd-300ma"), is("heat", "yes")),
          sound: NEVER,
          regulations: ["422.3.9"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(no("enclosure"), no("rcd-300ma"), is("dust", "covering"), is("heat", "yes")),
      words: "equipment is not what a place with easily burning contents asks for",
      regulations: ["422.3.3", "422.3.9"],
    },
  ],
  dangers: [
    {
      id: "heat",
      least: "C2",
      when: yes("heat"),
      words: "there are signs of heat or scorching",
      regulations: ["421.1.1", "526.1"],
    },
  ],
  client: {
    C2: [
      says(
        "The electrics here have been hot. They could start a fire. Keep the place clean, and have them put right soon.",
        yes("heat"),
      ),
      "Dust or stock could catch fire from the electrics here. Clean up, and have it put right soon.",
    ],
    C3: "Parts of the electrics here are not what a dusty place needs. Keep the place clean. They are not a danger now.",
    FI: unsure("We could not find out if the electrics here could start a fire. This must be looked at soon.", [
      "dust",
      "enclosure",
      "rcd-300ma",
      "heat",
    ]),
    none: "The electrics suit this dusty place.",
  },
  remedies: [
    { words: "Clear dust and stock away and keep it so.", changes: { dust: "clean" } },
    { words: "Fit an RCD of 300 mA or less.", changes: { "rcd-300ma": "yes" } },
    {
      words: "Fit enclosures that keep dust out, and replace what got hot.",
      changes: { enclosure: "yes", heat: "no", "rcd-300ma": "yes" },
    },
  ],
  examples: [
    {
      name: "sawdust over an open motor starter, no RCD",
      facts: { dust: "covering", enclosure: false, "rcd-300ma": false, heat: false },
      possible: ["C2"],
      source: "422.3.3, 422.3.9",
    },
    {
      name: "clean shop, RCD missing",
      facts: { dust: "clean", enclosure: true, "rcd-300ma": false, heat: false },
      possible: ["C3"],
      source: "422.3.9",
    },
    {
      name: "enclosures not opened",
      facts: { dust: "covering", "rcd-300ma": false, heat: false },
      possible: ["C3", "C2"],
      missing: ["enclosure"],
      source: "union over what may be inside",
    },
  ],
});
