import { all, held, is, NEVER, ranked, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A fuse or single-pole device in the neutral of a whole circuit, as in old two-pole boards. Switches and fuses of one accessory have their own topic. */
export const neutralFused = topic({
  id: "neutral-fused",
  title: "Board: fuse or single-pole device in the neutral of a circuit",
  group: "boards",
  items: ["boards.single-pole"],
  facts: {
    "neutral-device": ranked({
      asks: "At the board, what stands in the neutral of the circuit? (For a switch or fuse at a single point, see neutral-switched-or-fused.)",
      effort: "opened",
      values: {
        none: "nothing that can open stands in the neutral",
        linked: "a device that opens line and neutral together stands in the neutral",
        "two-lines": "the circuit lies between two lines with a device in each, and neither is a neutral",
        disconnected:
          "a fuse or single-pole device stands in the neutral of a circuit that is disconnected at the board",
        alone: "a fuse or single-pole device that can open alone stands in the neutral",
      },
    }),
  },
  contested: {
    "old-two-pole": {
      question: "Is an old board with fuses in both poles, otherwise sound, potentially dangerous?",
      positions: {
        danger: {
          words: "a fuse in the neutral is one event from equipment that seems dead and is live",
          because: "either fuse may be the one that opens",
        },
        improve: {
          words: "it is to be improved while fuses and wiring are sound and a linked main switch is there",
          because: "the kind was made for supplies of its day, and whoever works here proves dead first",
        },
      },
    },
  },
  paths: [
    {
      id: "looks-dead",
      hazard: "contact-with-live-parts",
      route: "the neutral opens alone, the equipment looks dead but is live, and somebody opens it",
      exists: is("neutral-device", "alone"),
      layers: [
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure of the equipment", ["416.2.1"]),
        {
          id: "neutral-whole",
          provision: "isolation",
          words: "a neutral that never opens without the line",
          gone: all(is("neutral-device", "alone"), held("old-two-pole", "danger")),
          sound: NEVER,
          regulations: ["132.14.2", "530.3.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("neutral-device", "alone", "disconnected"),
      words: "a single-pole device stands in the neutral",
      regulations: ["132.14.1", "132.14.2"],
    },
  ],
  client: {
    C2: "A fuse in the wrong wire can make things look dead while they are still live. That could give a shock. Change it soon.",
    C3: "A fuse is in the wrong wire. It is not a danger now. It is best to take it out.",
    FI: unsure("We could not find out how a fuse is wired. It could be unsafe. It must be looked at soon.", [
      "neutral-device",
    ]),
    none: "The fuses are in the right wires.",
  },
  remedies: [
    {
      words: "Replace the neutral fuse by a solid link and protect the line by a device that suits the circuit.",
      changes: { "neutral-device": "none" },
    },
    {
      words: "Replace the board by one with devices in the line, or devices that open both.",
      changes: { "neutral-device": "linked" },
    },
  ],
  examples: [
    {
      name: "fuses in line and neutral",
      facts: { "neutral-device": "alone" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: neutral fuse can blow alone and leave equipment live",
    },
    {
      name: "two-pole breaker that opens both",
      facts: { "neutral-device": "linked" },
      possible: ["none"],
      source: "regulation 530.3.2",
    },
    {
      name: "old board left, circuit disconnected",
      facts: { "neutral-device": "disconnected" },
      possible: ["C3"],
      source: "trade practice: no route while disconnected",
    },
    {
      name: "two fuses, supply to the board not traced",
      facts: { "neutral-device": "two-lines | alone" },
      possible: ["none", "C2"],
      missing: ["neutral-device"],
      source: "union over what the conductors are",
    },
  ],
});
