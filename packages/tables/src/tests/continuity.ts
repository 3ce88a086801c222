import { published, publishedBetween, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

/** What BS EN 61557-4 asks of a continuity instrument. */
export const CONTINUITY_INSTRUMENT = Object.freeze({
  /** Open-circuit voltage a.c. or d.c., V. */
  openCircuitVoltage: Object.freeze({ least: 4, greatest: 24 }),
  /** Least short-circuit current, A. */
  shortCircuitCurrent: 0.2,
  /** Range that has to be covered within the permitted uncertainty, Ω. */
  range: Object.freeze({ least: 0.2, greatest: 2 }),
  /** Coarsest resolution of a digital display, Ω. */
  resolution: 0.01,
  source: source("BS EN 61557-4", "current", "published"),
});

/** Difference of the end-to-end resistances r1 and rn of a ring that is still agreement, Ω. */
export const ringEndAgreement = published(
  TERM.resistanceDifference,
  0.05,
  source("handbook figure on ring final circuits", "17th edition and later", "memory"),
  "r1 and rn within about 0.05 Ω",
);

/** Ratio r2 ÷ r1 of a ring in 2.5/1.5 mm² cable: by greatest resistances, up to the ratio of the areas. */
export const ringRatioOf25And15 = publishedBetween(
  TERM.ringRatio,
  12.1 / 7.41,
  12.1 / 7.41,
  2.5 / 1.5,
  source("BS EN 60228 and the conductor areas", "current", "derived", {
    formula: "12.10 ÷ 7.41 = 1.63 by greatest resistance, 2.5 ÷ 1.5 = 1.67 by area",
  }),
  "2.5 mm² line and neutral, 1.5 mm² protective conductor",
);

/** Part of the summed end-to-end resistances that a cross-connected ring shows at every point but on spurs. */
export const ringCrossPart = published(
  TERM.quarter,
  0.25,
  source("two halves of a ring in parallel", "none", "derived", {
    formula: "(r1 + rn) ÷ 4 and (r1 + r2) ÷ 4; exact where both conductors have the same resistance",
  }),
  "cross-connected ring",
);

/** Resistance of a sound bonding joint, Ω. The conductor itself is compared with its length. */
export const bondingJointResistance = published(
  TERM.resistance,
  0.05,
  source("handbook figure on bonding connections", "17th edition and later", "memory", {
    doubt: "a figure for the joint, not a limit for a conductor of any length",
  }),
  "joint, about 0.05 Ω or less",
);
