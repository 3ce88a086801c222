import { all, any, held, is, NEVER, no, oneKind, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A board with semi-enclosed fuses: old, and judged by what they do. Carriers and breaking capacity are subjects of their own. */
export const rewirableFuses = topic({
  id: "rewirable-fuses",
  title: "Rewirable fuses",
  group: "boards",
  items: ["boards.devices", "circuits.protection"],
  facts: {
    "wire-right": yesNo({
      asks: "Is every carrier wired with fuse wire of its own rating?",
      effort: "opened",
      yes: "every carrier holds fuse wire of its own rating",
      no: "a carrier holds wire of another rating, or something else",
      worse: "no",
    }),
    "cables-adequate": yesNo({
      asks: "Do the cables carry enough for fuses of this kind (fuse rating at most 0.725 of what the cable carries)?",
      effort: "measured",
      yes: "the cables are large enough for fuses of this kind",
      no: "a cable is too small for a fuse of this kind",
      worse: "no",
      worked: {
        by: "cable-capacity",
        matter: "device-within-cable",
        met: "yes",
        notMet: "no",
        findings: "not-met-only",
      },
    }),
    users: oneKind({
      asks: "Who changes a blown fuse?",
      effort: "glance",
      values: {
        ordinary: "ordinary persons change blown fuses",
        "skilled-only": "only skilled or instructed persons change blown fuses",
      },
    }),
  },
  contested: {
    kind: {
      question: "Is the kind of fuse itself worth an entry?",
      positions: {
        "old-not-bad": {
          words: "it is not: with the right wire and cables to suit it protects as it always did",
          because: "it is still a recognised device with limits of its own",
        },
        improvement: {
          words: "it is an improvement to advise where ordinary persons rewire it",
          because: "the next wire put in may be the wrong one",
        },
      },
    },
  },
  paths: [
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "a cable is overloaded for long and its insulation fails or burns",
      exists: any(no("wire-right"), no("cables-adequate")),
      layers: [
        oneEventAway("load", "surroundings", "a load that stays within what the cable carries", ["433.1"]),
        {
          id: "fuse",
          provision: "overcurrent-protection",
          words: "a fuse that melts before the cable is hurt",
          gone: any(no("wire-right"), no("cables-adequate")),
          sound: NEVER,
          regulations: ["433.1.202", "433.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(held("kind", "improvement"), is("users", "ordinary")),
      words: "fuses that ordinary persons rewire are not of the cartridge type that is preferred",
      regulations: ["533.1.1"],
    },
  ],
  client: {
    C2: "The old fuses do not protect you well enough as they are. They could lead to a fire or shock. Fix this soon.",
    C3: "The fuse box has old fuses that work. A newer kind would be safer to use.",
    FI: unsure("We could not find out if the old fuses suit the wires. This must be looked at soon.", [
      "wire-right",
      "cables-adequate",
    ]),
    none: "The fuses are old, but they do their job.",
  },
  remedies: [
    { words: "Rewire the carriers with fuse wire of their rating.", changes: { "wire-right": "yes" } },
    {
      words: "Replace the fuses by devices that suit the cables and the fault current.",
      changes: { "wire-right": "yes", "cables-adequate": "yes" },
    },
  ],
  examples: [
    {
      name: "right wire, cables adequate, shielded",
      facts: { "wire-right": true, "cables-adequate": true },
      possible: ["none"],
      classification: "none",
      source: "trade practice: old but adequate",
    },
    {
      name: "the same where the kind is held to want improving",
      facts: {
        "wire-right": true,
        "cables-adequate": true,
        users: "ordinary",
      },
      positions: { kind: "improvement" },
      possible: ["C3"],
      source: "trade discussion: rewirable fuses in a home",
    },
    {
      name: "a cable too small for the fuse",
      facts: { "wire-right": true, "cables-adequate": false },
      possible: ["C2"],
      source: "arithmetic: 30 A > 0.725 × 27 A",
    },
    {
      name: "cables not sized yet",
      facts: { "wire-right": true },
      possible: ["none", "C2"],
      missing: ["cables-adequate"],
      source: "union over the capacity of the cables",
    },
  ],
});
