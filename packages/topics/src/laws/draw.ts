import type { Compiled } from "@good-grounds/core";

/** Numbers from a seed, the same everywhere (mulberry32): whole numbers below `among`. */
export function drawing(seed: number): (among: number) => number {
  let state = seed >>> 0;
  return (among) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * among);
  };
}

/** Bit sets of the values of every variable, nothing being known. */
export function fullMasks({ variables }: Compiled): readonly number[] {
  return variables.map(({ cells }) => 2 ** cells.values.length - 1);
}

/** What may be known: of each variable one value, some of them, or nothing. */
export function someKnowledge(compiled: Compiled, draw: (among: number) => number): readonly number[] {
  return fullMasks(compiled).map((full) => (draw(2) === 0 ? full : 1 + draw(full)));
}
