import { ALWAYS, all, any, held, is, NEVER, not, ranked, says, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";
import { HEAT_OR_LOOSE } from "./facts.ts";

/** Devices of another maker, or of another range, in a board. What it does to a conditional rating is told under breaking capacity. */
export const mixedDevices = topic({
  id: "mixed-devices",
  title: "Devices of another make in a board",
  group: "boards",
  items: ["boards.devices"],
  facts: {
    devices: ranked({
      asks: "Of what make or range are the devices, next to that of the board?",
      effort: "opened",
      values: {
        "own-range": "all devices are of the board's own range",
        allowed: "devices of another make or range are fitted, and the maker of the board allows them in writing",
        other: "devices of another make or range are fitted, and nothing shows that the maker of the board allows them",
      },
    }),
    fit: ranked({
      asks: "How do the devices sit on the busbar and the rail?",
      effort: "opened",
      values: {
        good: "they sit square, and the busbar is clamped over its full width",
        poor: "the busbar is bent, packed, out of line or clamped over part of its width",
      },
    }),
    heat: HEAT_OR_LOOSE,
  },
  contested: {
    weight: {
      question: "Is a device of another make worth an entry where it fits well and runs cool?",
      positions: {
        departure: {
          words: "it is: the assembly is no longer the one that was type-tested",
          because: "compatibility and the conditional rating rest on the maker's instructions",
        },
        "no-danger-shown": {
          words: "it is not, where fit and temperature are in order",
          because: "nothing is shown that could hurt anybody",
        },
      },
    },
  },
  paths: [
    {
      id: "busbar-joint",
      hazard: "burns-or-fire",
      route: "a bad joint between busbar and device heats until something burns",
      exists: ALWAYS,
      layers: [
        {
          id: "contact",
          provision: "thermal-protection",
          words: "a sound joint between busbar and device",
          gone: any(is("fit", "poor"), not(is("heat", "none"))),
          sound: all(is("fit", "good"), is("heat", "none")),
          regulations: ["526.1", "134.1.1"],
        },
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "the parts round the joint, which stand some heat",
          gone: is("heat", "active"),
          sound: NEVER,
          regulations: ["421.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("devices", "other"), held("weight", "departure")),
      words: "devices are fitted that the board was not verified with",
      regulations: ["536.4.203", "134.1.1"],
    },
  ],
  client: {
    C1: "A part in the fuse box is very hot or smells of burning. Turn it off. It must be put right today.",
    C2: [
      says("Some parts in the fuse box do not fit well. They could start a fire. Change them soon.", is("fit", "poor")),
      says(
        "A part in the fuse box is loose or has been hot. It could start a fire. Have it put right soon.",
        is("heat", "loose", "marks"),
      ),
    ],
    C3: "Some parts in the fuse box are from other makers. They fit and stay cool. Matched parts would be better.",
    FI: [
      unsure(
        "Some parts in the fuse box are from other makers. We could not check if they fit. Have them looked at.",
        ["fit"],
        is("devices", "allowed", "other"),
      ),
      unsure("We could not check if the parts in the fuse box fit and stay cool. Have them looked at.", [
        "fit",
        "heat",
      ]),
    ],
    none: [
      says("The parts in the fuse box go well together.", is("devices", "own-range", "allowed")),
      "The parts in the fuse box fit and stay cool.",
    ],
  },
  remedies: [
    {
      words: "Get the maker's word that the devices may be used in this board.",
      changes: { devices: "allowed" },
    },
    {
      words: "Replace the devices by those of the board's own range, with any busbar that heat has hurt.",
      changes: { devices: "own-range", fit: "good", heat: "none" },
    },
  ],
  examples: [
    {
      name: "two makes, good fit, no heat",
      facts: { devices: "other", fit: "good", heat: "none" },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: makes mixed in a board",
    },
    {
      name: "the same where no danger is held to be no entry",
      facts: { devices: "other", fit: "good", heat: "none" },
      positions: { weight: "no-danger-shown" },
      possible: ["none"],
      source: "trade discussion: makes mixed in a board",
    },
    {
      name: "busbar clamped by its edge",
      facts: { devices: "other", fit: "poor", heat: "none" },
      possible: ["C2"],
      source: "trade discussion: poor busbar contact",
    },
    {
      name: "fit not looked at",
      facts: { devices: "other", heat: "none" },
      possible: ["C3", "C2"],
      missing: ["fit"],
      source: "union over the fit",
    },
  ],
});
