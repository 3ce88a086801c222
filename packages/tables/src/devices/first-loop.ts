import { type Expected, expected, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

const LOOPS = source("first half-cycles of a fault current that starts at the worst moment, 50 Hz", "any", "derived", {
  formula:
    "∫i²dt ÷ I² up to the first or second zero of i = √2·I·(sin(ωt + α − φ) − sin(α − φ)·e^(−ωt ÷ tan φ)), worst α",
  doubt: "power factors of the test circuits of BS EN 60898-1, from memory; loops of installations have higher ones",
});

/** Energy of the first loop and of the first two loops as a time of the steady current, s, by prospective current, A. */
export const FIRST_LOOPS = Object.freeze([
  { upTo: 1500, powerFactor: 0.93, one: 0.0103, two: 0.0203 },
  { upTo: 3000, powerFactor: 0.85, one: 0.0109, two: 0.0209 },
  { upTo: 4500, powerFactor: 0.75, one: 0.012, two: 0.022 },
  { upTo: 6000, powerFactor: 0.65, one: 0.0136, two: 0.0234 },
  { upTo: 10_000, powerFactor: 0.45, one: 0.0183, two: 0.0271 },
]);

const NODES = FIRST_LOOPS.map(({ upTo, powerFactor, one, two }) => {
  const node = (loops: 1 | 2, seconds: number) =>
    expected(
      TERM.equivalentTime,
      seconds,
      `${loops === 1 ? "current ends at its first zero" : "current ends at its second zero"}, power factor ${powerFactor} or better, up to ${upTo} A, worst moment of the wave`,
      [0, seconds],
      LOOPS,
    );
  return { upTo, 1: node(1, one), 2: node(2, two) };
});

/**
 * How long the steady current would take, in s, to let through what a prospective current of `amperes` lets through until
 * its first or second zero, at most. The asymmetry of a fault that starts at the worst moment is in it. Undefined above
 * 10 kA, where the current is limited and no more can be said without the maker.
 */
export function firstLoops(amperes: number, loops: 1 | 2): Expected<"second"> | undefined {
  return NODES.find(({ upTo }) => amperes <= upTo)?.[loops];
}
