import type { ExpectedReading, Explanation, Ground, Misfit, MisfitReading, NextReading } from "@good-grounds/core";
import { logSum } from "./gaussian.ts";
import { CLEAR, INNOCENT_ALONE, LISTED, LOG_TEN, TOLD_APART } from "./thresholds.ts";

/** An explanation with the logarithm of its prior share times the density it gives the readings. */
export interface Suspect {
  readonly id: string;
  readonly words: string;
  readonly innocent: boolean;
  readonly log: number;
  readonly would: readonly ExpectedReading[];
  /** What each possible next reading, by id, leads one to expect under it. */
  readonly expects: Readonly<Record<string, string>>;
}

interface Occasion extends Pick<Misfit, "kind" | "path" | "title" | "formula" | "innocentCauses"> {
  readonly soundLog: number;
  readonly readings: readonly MisfitReading[];
  readonly suspects: readonly Suspect[];
  /** Possible next readings in words, least trouble first. */
  readonly nexts: Readonly<Record<string, string>>;
  readonly grounds: readonly Ground[];
}

/** Explanations less likely than this part are not shown. */
const SHOWN = 0.01;

/** Sets suspects against each other and against everything being sound; undefined where there is nothing to speak of. */
export function lineUp(occasion: Occasion): Misfit | undefined {
  const { soundLog, suspects, nexts, kind, path, title, formula, innocentCauses, readings, grounds } = occasion;
  const ranked = suspects.filter(({ log }) => Number.isFinite(log)).sort((a, b) => b.log - a.log);
  const [first, second] = ranked;
  if (first === undefined) return undefined;
  const all = logSum(ranked.map(({ log }) => log));
  const odds = Math.min(MOST_ODDS, (all - soundLog) / LOG_TEN);
  if (!(odds >= LISTED)) return undefined;
  const tied = tiedOf(ranked);
  const explanations = ranked
    .map(
      ({ id, words, innocent, log, would }): Explanation => ({
        id,
        words,
        innocent,
        share: Math.exp(log - all),
        would,
      }),
    )
    .filter(({ share }) => share >= SHOWN);
  return {
    kind,
    path,
    title,
    odds,
    clear: odds >= CLEAR,
    readings,
    explanations,
    toldApart: tied === 1,
    tied: Math.min(tied, explanations.length),
    next: separating(first, second, nexts),
    innocentCauses,
    formula,
    grounds,
  };
}

/** How many, from the first on, cannot be told apart: something innocent alone in the lead has to be far likelier. */
function tiedOf([first, ...others]: readonly Suspect[]): number {
  if (first === undefined) return 0;
  const isApart = ({ innocent, log }: Suspect) =>
    Math.exp(first.log - log) >= (first.innocent && !innocent ? INNOCENT_ALONE : TOLD_APART);
  const apart = others.findIndex(isApart);
  return apart < 0 ? 1 + others.length : 1 + apart;
}

/** Beyond this power of ten, odds say nothing more. */
const MOST_ODDS = 300;

/** The first possible reading of which the two lead one to expect different things; the first there is where none does. */
function separating(
  first: Suspect,
  second: Suspect | undefined,
  nexts: Readonly<Record<string, string>>,
): NextReading | null {
  const ids = Object.keys(nexts);
  const differs = (id: string) => first.expects[id] !== second?.expects[id];
  const id = ids.find((one) => first.expects[one] !== undefined && differs(one)) ?? ids[0];
  if (id === undefined) return null;
  return {
    id,
    words: nexts[id] ?? "",
    expects: [first, ...(second === undefined ? [] : [second])].flatMap((one) => {
      const words = one.expects[id];
      return words === undefined ? [] : [{ explanation: one.id, words }];
    }),
  };
}

/** Logarithm of the normal density. */
export function logNormal(x: number, mean: number, deviation: number): number {
  const z = (x - mean) / deviation;
  return -0.5 * z * z - Math.log(deviation * Math.sqrt(2 * Math.PI));
}

/** Logarithm of the density, per unit of x, of something evenly spread on a logarithmic scale. */
export function logSpread(x: number, low: number, high: number): number {
  return x >= low && x <= high ? -Math.log(x * Math.log(high / low)) : Number.NEGATIVE_INFINITY;
}
