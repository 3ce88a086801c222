import { type Expected, expected, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

const LOOPS = source("first half-cycles of a fault current that starts at the worst moment, 50 Hz", "any", "derived", {
  formula:
    "∫i²dt ÷ I² up to the first or second zero of i = √2·I·(sin(ωt + α − φ) − sin(α − φ)·e^(−ωt ÷ tan φ)), worst α",
  doubt: "power factors of the test circuits of BS EN 60898-1, from memory; loops of installations have higher ones",
});

/**
 * Energy of the first loop, of the first two loops, and until the first zero after contacts that part within 5 ms, as times
 * of the steady current, s, by prospective current, A. A fault that starts shortly before a zero is over that zero when
 * they part; what has flowed by then is little.
 */
export const FIRST_LOOPS = Object.freeze([
  { upTo: 1500, powerFactor: 0.93, one: 0.0103, two: 0.0203, parted: 0.012 },
  { upTo: 3000, powerFactor: 0.85, one: 0.0109, two: 0.0209, parted: 0.0115 },
  { upTo: 4500, powerFactor: 0.75, one: 0.012, two: 0.022, parted: 0.012 },
  { upTo: 6000, powerFactor: 0.65, one: 0.0136, two: 0.0234, parted: 0.0136 },
  { upTo: 10_000, powerFactor: 0.45, one: 0.0183, two: 0.0271, parted: 0.0183 },
]);

const NODES = FIRST_LOOPS.map(({ upTo, powerFactor, one, two, parted }) => {
  const node = (ends: string, seconds: number) =>
    expected(
      TERM.equivalentTime,
      seconds,
      `${ends}, power factor ${powerFactor} or better, up to ${upTo} A, worst moment of the wave`,
      [0, seconds],
      LOOPS,
    );
  return {
    upTo,
    1: node("current ends at its first zero", one),
    2: node("current ends at its second zero", two),
    parted: node("contacts part within 5 ms and the current ends at the next zero", parted),
  };
});

/**
 * How long the steady current would take, in s, to let through what a prospective current of `amperes` lets through until
 * its first or second zero, at most. The asymmetry of a fault that starts at the worst moment is in it. Undefined above
 * 10 kA, where the current is limited and no more can be said without the maker.
 */
export function firstLoops(amperes: number, loops: 1 | 2): Expected<"second"> | undefined {
  return NODES.find(({ upTo }) => amperes <= upTo)?.[loops];
}

/** The same until the first zero after contacts that part within 5 ms of the beginning. */
export function afterParting(amperes: number): Expected<"second"> | undefined {
  return NODES.find(({ upTo }) => amperes <= upTo)?.parted;
}
