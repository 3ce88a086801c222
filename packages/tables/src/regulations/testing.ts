import { regulationsOf } from "./regulation.ts";

const NOT_IN_FULL = { doubt: "the rule was seen, the exact wording of the times was not" };

/** Tests of Chapter 64. */
export const TESTING = regulationsOf("testing", [
  ["643.2.1", "memory", "Continuity of protective and bonding conductors and of every conductor of a ring."],
  ["643.3.2", "published", "Insulation resistance between live conductors and to earth, by Table 64."],
  [
    "643.3.3",
    "published",
    "With equipment connected that may sway the result or be damaged: 250 V d.c. between live conductors together and earth.",
    { doubt: "the limit of 1 MΩ for this test is remembered" },
  ],
  ["643.6", "memory", "Polarity: single-pole devices, lampholders and accessories are connected the right way round."],
  [
    "643.7.1",
    "published",
    "That automatic disconnection works is shown by inspection and test of its parts.",
    NOT_IN_FULL,
  ],
  ["643.7.3", "memory", "Loop impedance and prospective fault current are found where protection rests on them."],
  [
    "643.8",
    "published",
    "Additional protection by an RCD of any type is shown by one alternating test at its rated residual current.",
    NOT_IN_FULL,
  ],
  ["643.9", "memory", "Phase sequence of multiphase circuits is kept throughout."],
  ["643.10", "memory", "Functional test of assemblies, controls, interlocks and test buttons."],
]);
