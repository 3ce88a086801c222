import { held, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Mains wiring among extra-low voltage, bell, data or telephone wiring. */
export const wiringNotKeptApart = topic({
  id: "wiring-not-kept-apart",
  title: "Mains wiring mixed with extra-low voltage or data wiring",
  group: "cables",
  items: ["circuits.segregation"],
  facts: {
    together: ranked({
      asks: "How is mains wiring kept from extra-low voltage, data or telephone wiring?",
      effort: "opened",
      values: {
        apart: "mains and extra-low voltage wiring are in ways of their own, or all insulated for the mains voltage",
        sheathed: "they lie together, and the mains wiring has its sheath",
        cores: "single mains cores lie among extra-low voltage wires, or share a box without a partition",
      },
    }),
    insulation: ranked({
      asks: "Where they lie together, what is the insulation like?",
      effort: "opened",
      values: {
        whole: "the insulation of both is whole where they lie together",
        damaged: "insulation is cut or chafed where they lie together",
      },
    }),
  },
  contested: {
    "cores-together": {
      question: "Mains cores among extra-low voltage wires, all insulation sound: danger or improvement?",
      positions: {
        danger: {
          words: "one damaged core puts mains on wires that people handle",
          because: "a bell push or data socket has no protection against mains, 414.4.2",
        },
        improve: {
          words: "with both insulations whole it is to be improved",
          because: "two insulations lie between mains and the other wires",
        },
      },
    },
  },
  paths: [
    {
      id: "mains-on-low-voltage",
      hazard: "shock-under-fault",
      route: "mains gets onto extra-low voltage wires and somebody touches them at a bell or data point",
      exists: is("together", "cores"),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of the mains cores",
          gone: is("insulation", "damaged"),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "parted",
          provision: "insulation",
          words: "the insulation of the other wires, which is not made for mains",
          gone: held("cores-together", "danger"),
          sound: NEVER,
          regulations: ["528.1", "414.4.2"],
        },
      ],
    },
    {
      id: "chafed",
      hazard: "shock-under-fault",
      route: "a damaged mains cable touches the other wiring, and somebody touches that at a bell or data point",
      exists: is("insulation", "damaged"),
      layers: [
        {
          id: "sheath",
          provision: "insulation",
          words: "the sheath, or the distance, between the two",
          gone: is("together", "cores"),
          sound: is("together", "apart"),
          regulations: ["528.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("together", "sheathed", "cores"),
      words: "mains and extra-low voltage wiring are not kept apart",
      regulations: ["528.1"],
    },
  ],
  client: {
    C1: "A damaged power wire lies among bell or data wires that people handle. This can kill. It must be made safe now.",
    C2: [
      says(
        "Power wires are mixed with bell or data wires. If one is worn, you could get a shock. Have them moved soon.",
        is("insulation", "whole"),
      ),
      says(
        "Power wires and bell or data wires lie together, and some are damaged. You could get a shock. Have this put right soon.",
        is("insulation", "damaged"),
      ),
    ],
    C3: "Power cables and data wires share a space. They are sound now. Moving them apart would be better.",
    FI: unsure("We could not see if power wires are mixed with bell or data wires. This must be looked at.", [
      "together",
      "insulation",
    ]),
    none: "Power wires and data wires are kept apart.",
  },
  remedies: [
    {
      words: "Fit a partition, or give the other wiring a way of its own.",
      changes: { together: "apart" },
    },
    { words: "Replace the damaged length.", changes: { insulation: "whole" } },
  ],
  examples: [
    {
      name: "data cable beside sheathed mains cable in one trunking",
      facts: { together: "sheathed", insulation: "whole" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 528.1",
    },
    {
      name: "bell wire among single mains cores in one box",
      facts: { together: "cores", insulation: "whole" },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 528.1",
    },
    {
      name: "the same held to be an improvement",
      facts: { together: "cores", insulation: "whole" },
      positions: { "cores-together": "improve" },
      possible: ["C3"],
      source: "trade discussion of separation",
    },
    {
      name: "inside of the duct not seen",
      facts: { insulation: "whole", together: { notKnown: "limited", reason: "duct sealed" } },
      possible: ["none", "C3", "C2"],
      classification: "FI",
      source: "union over the separation",
    },
    {
      name: "cores together, insulation not looked at",
      facts: { together: "cores" },
      possible: ["C2", "C1"],
      missing: ["insulation"],
      source: "union over the insulation",
    },
  ],
});
