import { any, held, is, NEVER, ranked } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Cables too near other services: hot pipes, water, gas, or extra-low voltage and data wiring. */
export const cableNearServices = topic({
  id: "cable-near-services",
  title: "Cable too near another service",
  group: "cables",
  items: ["circuits.segregation"],
  facts: {
    "low-voltage": ranked({
      asks: "How is mains wiring kept from extra-low voltage, data or telephone wiring?",
      effort: "opened",
      values: {
        apart: "mains and extra-low voltage wiring are in ways of their own, or all insulated for the mains voltage",
        "sheathed-together": "they lie together, and the mains wiring has its sheath",
        "cores-together": "single mains cores lie among extra-low voltage wires, or share a box without a partition",
      },
    }),
    pipe: ranked({
      asks: "How does it lie to pipes and flues?",
      effort: "glance",
      values: {
        clear: "the cable is clear of pipes and flues",
        touching: "the cable touches a pipe that is neither hot nor dripping",
        heated: "the cable lies on a pipe or flue that heats it beyond what it is made for, or water drips on it",
      },
    }),
    sheath: ranked({
      asks: "What is the cable like at the nearest place?",
      effort: "glance",
      values: {
        sound: "the cable is sound there",
        marked: "its sheath is marked by heat, rubbing or water",
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
      exists: is("low-voltage", "cores-together"),
      layers: [
        oneEventAway("insulation", "insulation", "the insulation of the mains cores", ["416.1"]),
        {
          id: "parted",
          provision: "barrier-or-enclosure",
          words: "a sheath, a partition, or insulation for mains on the other wires",
          gone: held("cores-together", "danger"),
          sound: NEVER,
          regulations: ["528.1", "414.4.2"],
        },
      ],
    },
    {
      id: "sheath-fails",
      hazard: "contact-with-live-parts",
      route: "heat, water or rubbing goes on until insulation fails and a pipe becomes live",
      exists: is("pipe", "touching", "heated"),
      layers: [
        {
          id: "clear",
          provision: "thermal-protection",
          words: "distance or a shield from the pipe",
          gone: is("sheath", "marked"),
          sound: NEVER,
          regulations: ["528.3.1", "522.2.1"],
        },
        oneEventAway("insulation", "insulation", "insulation that still holds", ["416.1"]),
      ],
    },
  ],
  departures: [
    {
      when: is("low-voltage", "sheathed-together", "cores-together"),
      words: "mains and extra-low voltage wiring are not kept apart",
      regulations: ["528.1"],
    },
    {
      when: any(is("pipe", "touching", "heated"), is("sheath", "marked")),
      words: "a cable is exposed to harm from a pipe or another service",
      regulations: ["528.3.1", "528.3.4"],
    },
  ],
  client: {
    C2: "A power cable lies on a hot pipe or mixed with bell or data wires. Its cover could fail and give a shock. Have it moved soon.",
    C3: "A power cable lies close to a pipe or to data wires. It is sound now. Moving it would be better.",
    FI: "We could not see how close a power cable lies to a pipe or other wires. This must be looked at.",
    none: "The power cables are far enough from pipes and other wires.",
  },
  remedies: [
    {
      words: "Move or clip the cable clear of the pipe, and replace a marked length.",
      changes: { pipe: "clear", sheath: "sound" },
    },
    { words: "Fit a partition, or give the other wiring a way of its own.", changes: { "low-voltage": "apart" } },
  ],
  examples: [
    {
      name: "data cable beside sheathed mains cable in one trunking",
      facts: { "low-voltage": "sheathed-together", pipe: "clear", sheath: "sound" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 528.1",
    },
    {
      name: "bell wire among single mains cores in one box",
      facts: { "low-voltage": "cores-together", pipe: "clear", sheath: "sound" },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 528.1",
    },
    {
      name: "the same held to be an improvement",
      facts: { "low-voltage": "cores-together", pipe: "clear", sheath: "sound" },
      positions: { "cores-together": "improve" },
      possible: ["C3"],
      source: "trade discussion of separation",
    },
    {
      name: "cable tied to a heating pipe, sheath marked",
      facts: { "low-voltage": "apart", pipe: "heated", sheath: "marked" },
      possible: ["C2"],
      source: "regulation 528.3.1",
    },
    {
      name: "cable across a cold pipe",
      facts: { "low-voltage": "apart", pipe: "touching", sheath: "sound" },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "inside of the duct not seen",
      facts: { pipe: "clear", sheath: "sound", "low-voltage": { notKnown: "limited", reason: "duct sealed" } },
      possible: ["none", "C3", "C2"],
      classification: "FI",
      source: "union over the separation",
    },
    {
      name: "sheath under the lagging not looked at",
      facts: { "low-voltage": "apart", pipe: "touching" },
      possible: ["C3", "C2"],
      missing: ["sheath"],
      source: "union over the sheath",
    },
  ],
});
