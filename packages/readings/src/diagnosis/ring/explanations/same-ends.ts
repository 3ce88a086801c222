import { PAIRS, type Pair } from "../asked.ts";
import type { Explanation } from "../explanation.ts";
import type { Fault } from "../fault.ts";
import type { Observed } from "../readings.ts";

export interface SameEndsSaid {
  readonly kind: "same-ends-joined";
  readonly pairs: readonly Pair[];
}

const COMMON = 0.02;

/** The cross-connection was made between conductors of the same end instead of opposite ends. */
export function sameEndsFor(pairs: readonly Pair[]): Fault<SameEndsSaid> {
  return {
    key: `same-ends ${pairs.join(" ")}`,
    common: COMMON,
    sizes: [],
    ofMethod: true,
    bears(model) {
      for (const pair of pairs) model.joinSameEnds(pair);
    },
    says: () => ({ kind: "same-ends-joined", pairs }),
  };
}

/** Beside the board such a reading falls to nothing; where the least has more of the greatest than this, none does. */
const FALLS = 0.8;

function fallsOff(observed: readonly Observed[], pair: Pair): boolean {
  const read = observed.filter(({ asked, bound }) => asked.point >= 0 && asked.pair === pair && bound !== "above");
  const shown = read.map((one) => one.shown);
  return read.length > 0 && (read.length === 1 || Math.min(...shown) < FALLS * Math.max(...shown));
}

export const sameEnds: Explanation<SameEndsSaid> = {
  id: "same-ends-joined",
  innocent: true,
  tried({ problem, base }) {
    if (base.hypothesis.faults.some(({ key }) => key.startsWith("same-ends"))) return [];
    const crossed = PAIRS.filter((pair) => fallsOff(problem.observed, pair));
    const sets = crossed.length > 1 ? [...crossed.map((pair) => [pair]), crossed] : [crossed];
    return sets.filter((pairs) => pairs.length > 0).map((pairs) => ({ fault: sameEndsFor(pairs) }));
  },
};
