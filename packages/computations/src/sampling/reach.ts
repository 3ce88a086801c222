import { chanceOfAtMost } from "./hypergeometric.ts";

/**
 * The most parts that can be defective among all, so that finding no more than `found` in the sample still happens with a
 * chance of more than 1 − `assurance`: the exact one-sided upper bound. `assurance` from 0 to 1, not included.
 */
export function mostDefective(population: number, inspected: number, found: number, assurance: number): number {
  let [holds, fails] = [found, population - (inspected - found) + 1];
  // More defective parts only make so few findings less likely, so the bound can be halved in on.
  while (fails - holds > 1) {
    const middle = Math.floor((holds + fails) / 2);
    if (chanceOfAtMost(found, population, middle, inspected) > 1 - assurance) holds = middle;
    else fails = middle;
  }
  return holds;
}

/** The fewest parts that can be defective among all, by the same measure from the other side. */
export function leastDefective(population: number, inspected: number, found: number, assurance: number): number {
  if (found === 0) return 0;
  const [lowest, highest] = [found, population - (inspected - found)];
  let [fails, holds] = [lowest - 1, highest];
  while (holds - fails > 1) {
    const middle = Math.floor((holds + fails) / 2);
    if (1 - chanceOfAtMost(found - 1, population, middle, inspected) > 1 - assurance) holds = middle;
    else fails = middle;
  }
  return holds;
}

/** Chance that a sample shows none of the defective parts. */
export function chanceOfMissing(population: number, defective: number, inspected: number): number {
  return chanceOfAtMost(0, population, defective, inspected);
}

/**
 * The smallest sample that, when no more than `found` defective parts turn up in it, leaves at most `accepted` defective
 * among all with the assurance asked for; the whole population where no smaller sample does.
 */
export function sampleFor(population: number, accepted: number, assurance: number, found = 0): number {
  let [fails, holds] = [found, population];
  while (holds - fails > 1) {
    const middle = Math.floor((fails + holds) / 2);
    if (mostDefective(population, middle, found, assurance) <= accepted) holds = middle;
    else fails = middle;
  }
  return holds;
}

/** What a finding asks for: how many parts of the kind have to be open in all before the assurance stands again. */
export interface Widening {
  readonly inspectInAll: number;
  readonly more: number;
  /** Whether only the whole population will do. */
  readonly all: boolean;
}

/**
 * The sample to widen to after `found` defective parts in `inspected`, if no further one turns up: until at most
 * `accepted` beyond those found can be defective. Defective parts found are put right and no longer among the doubtful.
 */
export function widened(
  population: number,
  inspected: number,
  found: number,
  accepted: number,
  assurance: number,
): Widening {
  let [fails, holds] = [inspected - 1, population];
  while (holds - fails > 1) {
    const middle = Math.floor((fails + holds) / 2);
    if (mostDefective(population, middle, found, assurance) - found <= accepted) holds = middle;
    else fails = middle;
  }
  return { inspectInAll: holds, more: holds - inspected, all: holds === population };
}
