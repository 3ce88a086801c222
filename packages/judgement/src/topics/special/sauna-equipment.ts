import { any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Heaters, luminaires and wiring in a sauna. */
export const saunaEquipment = topic({
  id: "sauna-equipment",
  title: "Equipment in a sauna",
  group: "special",
  items: ["special.locations"],
  facts: {
    heater: ranked({
      asks: "What state is the heater in, and is there room round it?",
      effort: "glance",
      values: {
        sound: "the heater is sound, with the room its maker asks for",
        close: "wood stands closer to the heater than its maker allows",
        scorched: "wood near the heater is scorched",
      },
    }),
    "heat-rated": yesNo({
      asks: "Are luminaires and wiring of the hot zones made for their temperature?",
      effort: "glance",
      yes: "luminaires and wiring are made for the heat of their zone",
      no: "luminaires or wiring are not made for the heat of their zone",
      worse: "no",
    }),
    "rcd-30ma": yesNo({
      asks: "Are the circuits of the sauna behind a 30 mA RCD that works (the heater may be left out)?",
      effort: "glance",
      yes: "the circuits are behind a working 30 mA RCD",
      no: "circuits other than the heater's lack a working 30 mA RCD",
      worse: "no",
    }),
    insulation: ranked({
      asks: "What state is the insulation in where it gets hot?",
      effort: "opened",
      values: { sound: "the insulation is sound", brittle: "the insulation is brittle or cracked" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "wood-burns",
      hazard: "burns-or-fire",
      route: "the heater sets wood alight",
      exists: is("heater", "close", "scorched"),
      layers: [
        {
          id: "distance",
          provision: "thermal-protection",
          words: "distance between heater and wood",
          gone: is("heater", "scorched"),
          sound: NEVER,
          regulations: ["703.512.2", "421.1.2"],
        },
        oneEventAway("cut-out", "thermal-protection", "the heater's thermal cut-out", ["424.2"]),
      ],
    },
    {
      id: "heat-bares",
      hazard: "contact-with-live-parts",
      route: "heat destroys insulation and somebody wet touches what becomes live",
      exists: any(no("heat-rated"), is("insulation", "brittle")),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "insulation that stands the heat",
          gone: is("insulation", "brittle"),
          sound: NEVER,
          regulations: ["703.512.2", "522.2.1"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: no("rcd-30ma"),
          sound: NEVER,
          regulations: ["703.411.3.3"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure of the equipment", ["416.2.1"]),
      ],
    },
  ],
  departures: [
    {
      when: any(is("heater", "close", "scorched"), no("heat-rated"), no("rcd-30ma"), is("insulation", "brittle")),
      words: "equipment of the sauna is not what its zones ask for",
      regulations: ["703.512.2", "703.411.3.3"],
    },
  ],
  dangers: [
    {
      id: "brittle",
      least: "C2",
      when: is("insulation", "brittle"),
      words: "insulation is brittle or cracked by heat",
      regulations: ["134.1.1", "703.512.2"],
    },
  ],
  client: {
    C2: "The sauna could start a fire or give a shock. Do not use it until it has been put right.",
    C3: "The sauna is not a danger now, but some parts are not as they should be.",
    FI: unsure("We could not find out if the sauna is safe. Do not use it until this is known.", [
      "heater",
      "heat-rated",
      "rcd-30ma",
      "insulation",
    ]),
    none: "The sauna is as it should be.",
  },
  remedies: [
    { words: "Fit a 30 mA RCD.", changes: { "rcd-30ma": "yes" } },
    { words: "Give the heater the room its maker asks for and replace scorched wood.", changes: { heater: "sound" } },
    {
      words: "Replace wiring and luminaires by ones made for the heat.",
      changes: { "heat-rated": "yes", insulation: "sound" },
    },
  ],
  examples: [
    {
      name: "scorched boards behind the heater",
      facts: { heater: "scorched", "heat-rated": true, "rcd-30ma": true, insulation: "sound" },
      possible: ["C2"],
      source: "trade practice: fire has begun to show",
    },
    {
      name: "no RCD, all else sound",
      facts: { heater: "sound", "heat-rated": true, "rcd-30ma": false, insulation: "sound" },
      possible: ["C3"],
      source: "703.411.3.3",
    },
    {
      name: "brittle insulation, no RCD",
      facts: { heater: "sound", "heat-rated": false, "rcd-30ma": false, insulation: "brittle" },
      possible: ["C2"],
      source: "trade practice: insulation lost to heat",
    },
    {
      name: "insulation not looked at",
      facts: { heater: "sound", "heat-rated": false, "rcd-30ma": false },
      possible: ["C3", "C2"],
      missing: ["insulation"],
      source: "union over its state",
    },
  ],
});
