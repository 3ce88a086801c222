import { all, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Everything behind one RCD or one device, so that one fault puts all of it out. */
export const supplyDivision = topic({
  id: "supply-division",
  title: "All circuits behind one RCD or device, whatever the earthing",
  group: "boards",
  items: ["boards.devices", "boards.rcd"],
  facts: {
    division: ranked({
      asks: "What does one earth fault or overload put out?",
      effort: "opened",
      values: {
        divided: "one fault puts out one circuit or a part of the circuits",
        "one-device": "one RCD or device puts out every circuit at once",
      },
    }),
    "small-and-content": yesNo({
      asks: "Is it a small flat of a few circuits whose occupier knows of it and is content?",
      effort: "glance",
      yes: "the place is a small flat whose occupier knows of it and is content",
      no: "the place is more than a small flat, or the occupier has not been asked",
      worse: "no",
    }),
    "dark-hurts": yesNo({
      asks: "Would a sudden loss of all light put anyone here at risk (frail or disabled persons, steep stairs, machines), with no emergency light to come on?",
      effort: "glance",
      yes: "sudden darkness would put somebody here at risk, and no other light comes on",
      no: "sudden darkness would be a nuisance only, or other light comes on",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "darkness",
      hazard: "loss-of-supply",
      route: "one fault puts out all light, and somebody at risk falls or is caught",
      exists: all(is("division", "one-device"), yes("dark-hurts")),
      layers: [
        oneEventAway("no-trip", "insulation", "circuits and appliances that have no fault", ["416.1"]),
        {
          id: "light-left",
          provision: "surroundings",
          words: "light that does not hang on the same device",
          gone: yes("dark-hurts"),
          sound: NEVER,
          regulations: ["314.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("division", "one-device"), no("small-and-content")),
      words: "circuits are not divided so that a fault leaves part of the installation in use",
      regulations: ["314.1", "314.2"],
    },
  ],
  client: {
    C2: "One fault turns off everything at once. Someone here could fall in the dark. Split the supply soon.",
    C3: "One fault turns off everything at once. That is a nuisance. It would be better split up.",
    FI: [
      unsure("We could not find out what goes off when one switch trips. This must be looked at.", ["division"]),
      unsure(
        "One fault turns off everything at once. We could not find out if the dark would harm someone here. It must be looked at.",
        ["dark-hurts"],
        is("division", "one-device"),
      ),
    ],
    none: "A fault does not put out more than it should.",
  },
  remedies: [
    {
      words: "Fit an emergency light on the stairs and where people at risk stay.",
      changes: { "dark-hurts": "no" },
    },
    {
      words: "Divide the circuits among two or more RCDs, or give each circuit its own.",
      changes: { division: "divided" },
    },
  ],
  examples: [
    {
      name: "whole house behind one 30 mA RCD, TN-S",
      facts: { division: "one-device", "small-and-content": false, "dark-hurts": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: all circuits lost with one fault",
    },
    {
      name: "frail persons in the house",
      facts: { division: "one-device", "small-and-content": false, "dark-hurts": true },
      possible: ["C2"],
      source: "trade practice: loss of light puts vulnerable persons at risk",
    },
    {
      name: "small flat, occupier content",
      facts: { division: "one-device", "small-and-content": true, "dark-hurts": false },
      possible: ["none"],
      source: "trade practice: inconvenience accepted",
    },
    {
      name: "who lives there not asked",
      facts: { division: "one-device", "small-and-content": false },
      possible: ["C3", "C2"],
      missing: ["dark-hurts"],
      source: "union over who lives there",
    },
  ],
});
