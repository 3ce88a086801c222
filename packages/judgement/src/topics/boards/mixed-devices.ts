import { ALWAYS, all, any, held, is, NEVER, no, not, ranked, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { BREAKS_FAULT, HEAT } from "./facts.ts";

/** Devices of another maker, or of another range, in a board. */
export const mixedDevices = topic({
  id: "mixed-devices",
  title: "Devices of another make in a board",
  group: "boards",
  items: ["boards.devices"],
  facts: {
    "other-make": yesNo({
      asks: "Are there devices of another make or range than the board's?",
      effort: "opened",
      yes: "devices of another make or range are fitted",
      no: "all devices are of the board's own range",
      worse: "yes",
    }),
    "maker-accepts": yesNo({
      asks: "Is there paper from the maker of the board that allows these devices in it?",
      effort: "opened",
      yes: "the maker of the board allows these devices in writing",
      no: "nothing shows that the maker of the board allows these devices",
      worse: "no",
    }),
    fit: ranked({
      asks: "How do the devices sit on the busbar and the rail?",
      effort: "opened",
      values: {
        good: "they sit square, and the busbar is clamped over its full width",
        poor: "the busbar is bent, packed, out of line or clamped over part of its width",
      },
    }),
    heat: HEAT,
    "breaks-fault": BREAKS_FAULT,
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
          words: "it is not, where fit, heat and breaking capacity are in order",
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
    {
      id: "device-bursts",
      hazard: "burns-or-fire",
      route: "a short circuit is more than the device can break, and it bursts",
      exists: ALWAYS,
      layers: [
        {
          id: "breaking",
          provision: "overcurrent-protection",
          words: "a device that can break the fault current without help from the assembly's rating",
          gone: no("breaks-fault"),
          sound: yes("breaks-fault"),
          regulations: ["434.5.1", "536.4.203"],
        },
        oneEventAway("no-short-circuit", "insulation", "the insulation of the circuit", ["416.1"]),
      ],
    },
  ],
  departures: [
    {
      when: all(yes("other-make"), no("maker-accepts"), held("weight", "departure")),
      words: "devices are fitted that the board was not verified with",
      regulations: ["536.4.203", "134.1.1"],
    },
  ],
  client: {
    C1: "A part in the fuse box does not fit and burns hot now. Turn it off. It must be put right today.",
    C2: "Some parts in the fuse box do not fit or are too weak. They could start a fire. Change them soon.",
    C3: "Some parts in the fuse box are from other makers. They fit and stay cool. Matched parts would be better.",
    FI: "Some parts in the fuse box are from other makers. We could not check if they fit. Have them looked at.",
    none: "The parts in the fuse box go well together.",
  },
  remedies: [
    {
      words: "Get the maker's word that the devices may be used in this board.",
      changes: { "maker-accepts": "yes" },
    },
    {
      words: "Replace the devices by those of the board's own range, with any busbar that heat has hurt.",
      changes: { "other-make": "no", fit: "good", heat: "none", "breaks-fault": "yes" },
    },
  ],
  examples: [
    {
      name: "two makes, good fit, no heat",
      facts: { "other-make": true, "maker-accepts": false, fit: "good", heat: "none", "breaks-fault": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: makes mixed in a board",
    },
    {
      name: "the same where no danger is held to be no entry",
      facts: { "other-make": true, "maker-accepts": false, fit: "good", heat: "none", "breaks-fault": true },
      positions: { weight: "no-danger-shown" },
      possible: ["none"],
      source: "trade discussion: makes mixed in a board",
    },
    {
      name: "busbar clamped by its edge",
      facts: { "other-make": true, "maker-accepts": false, fit: "poor", heat: "none", "breaks-fault": true },
      possible: ["C2"],
      source: "trade discussion: poor busbar contact",
    },
    {
      name: "conditional rating lost, own capacity too small",
      facts: { "other-make": true, "maker-accepts": false, fit: "good", heat: "none", "breaks-fault": false },
      possible: ["C2"],
      source: "arithmetic: 7.7 kA > 6 kA, and the assembly's rating no longer holds",
    },
    {
      name: "fit not looked at",
      facts: { "other-make": true, "maker-accepts": false, heat: "none", "breaks-fault": true },
      possible: ["C3", "C2"],
      missing: ["fit"],
      source: "union over the fit",
    },
  ],
});
