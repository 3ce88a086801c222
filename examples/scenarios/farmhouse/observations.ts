import { inventedHash } from "../common.ts";

/** What was seen. */
export const OBSERVATIONS = [
  {
    id: "f1",
    place: "barn",
    things: [{ thing: "steel" }, { thing: "barn-floor" }],
    topic: "main-bonding-absent",
    facts: { bond: "none", extraneous: "shown-earthy", heat: "none" },
    what: "The steel frame of the barn is not bonded.",
    regulations: ["411.3.1.2", "705.415.2.1"],
    photographs: [inventedHash(5)],
    answers: [{ check: "bonding-size", part: "steel" }],
    choice: {
      classification: "C2",
      reason: "Livestock and people touch the frame; a fault on the dryer would put it at touch voltage.",
      by: "inspector",
    },
    remedy: "Bond the frame to the barn's earth bar with 10 mm².",
  },
  {
    id: "f2",
    board: "barn",
    circuit: "b4",
    place: "milking parlour",
    topic: "socket-no-cpc",
    facts: {
      "earth-path": { notKnown: "limited", reason: "the animals were in the parlour" },
      feeds: "class-1",
      "rcd-30ma": false,
    },
    what: "The parlour circuit could not be tested. It is protected by a rewireable fuse and has no RCD but the main one.",
    regulations: ["411.5", "705.411.1"],
    photographs: [inventedHash(6)],
    choice: {
      classification: "FI",
      reason: "Whether its protective conductor is whole is not known.",
      by: "inspector",
    },
    remedy: "Test when the animals are out.",
  },
  {
    id: "f3",
    board: "house",
    circuit: "h7",
    place: "borehole head",
    what: "Insulation resistance of the pump circuit is 3 MΩ; the pump stands in water.",
    answers: [{ check: "insulation-resistance" }],
    choice: {
      classification: "none",
      reason: "Within its limit and usual for a submerged pump; compare next time.",
      by: "inspector",
    },
  },
  {
    id: "f4",
    board: "house",
    circuit: "h4",
    place: "house board",
    topic: "lighting-no-rcd",
    facts: { "rcd-30ma": false, premises: "home", "asked-when-made": false },
    what: "The lights of the house have the 100 mA time-delayed RCD only.",
    regulations: ["411.3.4"],
  },
];

/** Pictures of what was seen, invented like all else. */
export const PHOTOGRAPHS = [
  {
    sha256: inventedHash(5),
    name: "frame.jpg",
    description: "foot of the barn frame, no bonding clamp",
    place: "barn, north corner",
    taken: "2026-11-11T10:20:00+00:00",
  },
  {
    sha256: inventedHash(6),
    name: "parlour-fuse.jpg",
    description: "rewireable fuse of the parlour circuit, carrier in place",
    place: "barn board",
    taken: "2026-11-11T10:26:00+00:00",
  },
];
