import { type CircuitLoad, type Fact, isKnownFact, type Reckoner, type Remark, type Settled } from "@good-grounds/core";
import { QUESTION } from "../matters.ts";

/** Fixed loads that pipes are joined to. */
const ON_PIPES: ReadonlySet<CircuitLoad> = new Set(["heating", "water-heater", "shower", "fixed-equipment"]);

/** Whether what a circuit feeds is joined to pipes: another way to earth beside the protective conductor. */
export function isOnPipes(load: Fact<CircuitLoad>): boolean {
  return isKnownFact(load) && ON_PIPES.has(load.word);
}

/**
 * A reading that is lower than the conductors explain and higher than the line conductor alone, at a load on pipes: the
 * pipes may lie beside the protective conductor, or stand in for it. Which of the two is not told by the reading.
 */
export function byOtherPath(load: Fact<CircuitLoad>, reckon: Reckoner): Settled {
  return reckon.settled(QUESTION.otherPath, "too-near", "pipes beside the protective conductor, or in its place", load);
}

export const OTHER_PATH: Remark = Object.freeze({
  code: "other-path",
  words:
    "Lower than the conductors explain and higher than the line conductor alone: the pipes of this load lie beside the protective conductor or stand in for it. Take the protective conductor out at the load and measure it by itself.",
});
