import { inventedHash } from "../common.ts";

/** What was seen. */
export const OBSERVATIONS = [
  {
    id: "w1",
    board: "workshop",
    circuit: "w12",
    place: "workshop, three-phase sockets",
    topic: "sockets-no-rcd",
    facts: {
      "outdoor-use": "unlikely",
      "other-socket": false,
      "used-by": "ordinary",
      "exception-recorded": false,
    },
    what: "The three-phase sockets, 32 A, have no RCD of 30 mA.",
    regulations: ["411.3.3"],
    choice: {
      classification: "C3",
      reason: "Used by instructed staff for two fixed machines; a risk assessment exists.",
      by: "inspector",
    },
    remedy: "Fit an RCBO, or keep the assessment with this report.",
  },
  {
    id: "w2",
    board: "workshop",
    circuit: "w14",
    place: "roller door isolator",
    topic: "cpc-resistance-high",
    facts: { cause: "poor-joint" },
    what: "A loose protective conductor terminal in the isolator; the loop reads 0.9 Ω more than the cable explains.",
    regulations: ["526.1"],
    photographs: [inventedHash(7)],
    answers: [{ check: "r1r2-length" }, { check: "maximum-zs" }, { check: "defective-sample" }],
    choice: {
      classification: "C2",
      reason: "The metal door may stay live in a fault longer than it should.",
      by: "inspector",
    },
    remedy: "Remake the terminal and repeat R1+R2 and Zs.",
  },
  {
    id: "w3",
    board: "shop",
    circuit: "s8",
    place: "shop board",
    topic: "breaking-capacity-exceeded",
    facts: { conditions: "not-needed", "backed-up": false },
    what: "An old breaker marked M3 protects the sign, in a board where the fault current is higher than 3 kA.",
    regulations: ["434.5.1"],
    photographs: [inventedHash(8)],
    choice: {
      classification: "C2",
      reason: "A short circuit near the board could burst the device.",
      by: "inspector",
    },
    remedy: "Change the breaker for one of the board's range.",
  },
  {
    id: "w4",
    board: "workshop",
    circuit: "w6",
    place: "workshop, hoist beam",
    what: "Zs at the hoist is lower than the parts explain. The hoist hangs from the bonded steel, which carries part of the test current; with the hoist unbolted from the beam R1+R2 fits its cable.",
    facts: { "parallel-path": true },
    regulations: ["643.7.3"],
    answers: [{ check: "zs-agreement" }],
    choice: {
      classification: "none",
      reason: "The protective conductor by itself is whole; the steel is a second way to earth, not the only one.",
      by: "inspector",
    },
  },
];

/** Pictures of what was seen, invented like all else. */
export const PHOTOGRAPHS = [
  {
    sha256: inventedHash(7),
    name: "door-isolator.jpg",
    description: "isolator of the roller door, cover off, loose terminal",
    place: "workshop, east wall",
    taken: "2026-09-22T11:05:00+01:00",
  },
  {
    sha256: inventedHash(8),
    name: "sign-breaker.jpg",
    description: "breaker of the sign with its mark",
    place: "behind the counter",
    taken: "2026-09-23T09:40:00+01:00",
  },
];
