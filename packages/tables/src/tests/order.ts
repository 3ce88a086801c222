import { source } from "../sources.ts";

/** Tests with the supply off, in order. */
export const DEAD_TESTS = [
  "protective-conductor-continuity",
  "ring-continuity",
  "insulation-resistance",
  "separation",
  "polarity",
  "earth-electrode",
] as const;

/** Tests with the supply on, in order. */
export const LIVE_TESTS = [
  "supply-polarity",
  "earth-fault-loop-impedance",
  "prospective-fault-current",
  "rcd",
  "phase-sequence",
  "functional",
] as const;

/** The order for initial verification. Periodic work may suit it to the case; live checks of the supply often come first. */
export const TEST_ORDER = Object.freeze({
  dead: DEAD_TESTS,
  live: LIVE_TESTS,
  source: source("BS 7671 643.1 and a training page on test sequence", "2018 to 2018+A4", "published"),
});
