import {
  type CircuitLoad,
  type Compared,
  type Fact,
  isKnownFact,
  type Reckoner,
  type Remark,
} from "@good-grounds/core";
import { type Account, agreement } from "@good-grounds/measurement";
import { QUESTION } from "../matters.ts";
import { asExpected } from "./as-expected.ts";

/** Fixed loads that pipes are joined to. */
const ON_PIPES: ReadonlySet<CircuitLoad> = new Set(["heating", "water-heater", "shower", "fixed-equipment"]);

/** Whether what a circuit feeds is joined to pipes: another way to earth beside the protective conductor. */
export function isOnPipes(load: Fact<CircuitLoad>): boolean {
  return isKnownFact(load) && ON_PIPES.has(load.word);
}

/**
 * Whether a reading at a load on pipes, lower than the conductors explain, is no lower than the line conductor leaves. The
 * pipes are a way to earth beside the protective conductor, and no path shortens the line conductor. That they are there
 * is expected, not shown: `OTHER_PATH` says what would show it.
 */
export function byOtherPath(reading: Account<"ohm">, lineAlone: Account<"ohm">, reckon: Reckoner): Compared {
  const least = { shown: asExpected(lineAlone.shown, PIPES, reckon), doubted: lineAlone.doubted };
  return agreement(reckon, QUESTION.otherPath, reading, least, "not-below", "expected");
}

const PIPES = "the least, with the pipes of the load beside the protective conductor";

export const OTHER_PATH: Remark = Object.freeze({
  code: "other-path",
  words:
    "Lower than the conductors explain and higher than the line conductor alone: the pipes of this load lie beside the protective conductor or stand in for it. Take the protective conductor out at the load and measure it by itself.",
});
