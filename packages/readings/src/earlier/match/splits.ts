import type { TraitWeight } from "@good-grounds/core";
import type { Traits } from "./traits.ts";
import { apart, closeness, LENGTH, POINTS } from "./weight.ts";
import type { Vocabulary } from "./words.ts";

/** A split or a merge, by positions: one of one file, several of the other. */
export interface DividedAt {
  readonly past: readonly number[];
  readonly now: readonly number[];
  readonly confidence: number;
  readonly because: readonly TraitWeight[];
}

/** ln of the odds that a circuit was divided rather than taken away and others put in. */
const RARE = Math.log(1 / 8);

/** By how much a division has to be better than what else explains the same circuits: odds of 9 to 1. */
const CLEARLY = Math.log(9);

/** More candidates for pieces of one circuit than this, and nothing can be told apart any more. */
const MOST_CANDIDATES = 14;

/** As for pairs; two pieces that are alike in load and size say more than one, and less than twice as much. */
const LIKE = Object.freeze({ load: 2, line: [-2.5, 1.5] as const, rings: 0.4, words: [-1.5, 4] as const });

interface Hypothesis {
  readonly whole: number;
  readonly pieces: readonly number[];
  /** How much better than the best explanation without a division. */
  readonly gain: number;
  readonly because: readonly TraitWeight[];
}

/**
 * Finds circuits that were divided and circuits that were joined. A division needs more than a circuit left over: points
 * or lengths have to add up. Where two divisions explain the same circuits nearly as well, neither is taken.
 */
export function splitsOf(
  before: readonly Traits[],
  after: readonly Traits[],
  partnerOf: ReadonlyMap<number, number>,
  weightOf: (past: number, now: number) => number,
  vocabulary: Vocabulary,
): readonly DividedAt[] {
  const backwards = new Map([...partnerOf].map(([i, j]) => [j, i]));
  const splits = hypotheses(before, after, partnerOf, backwards, weightOf, vocabulary).map((one) => ({
    one,
    past: [one.whole],
    now: one.pieces,
  }));
  const merges = hypotheses(after, before, backwards, partnerOf, (j, i) => weightOf(i, j), vocabulary).map((one) => ({
    one,
    past: one.pieces,
    now: [one.whole],
  }));
  const all = [...splits, ...merges];
  return all
    .filter((a) =>
      all.every(
        (b) =>
          a === b ||
          !(a.past.some((i) => b.past.includes(i)) || a.now.some((j) => b.now.includes(j))) ||
          a.one.gain - b.one.gain >= CLEARLY,
      ),
    )
    .map(({ one: { gain, because }, past, now }) => ({ past, now, because, confidence: 1 / (1 + Math.exp(-gain)) }));
}

function hypotheses(
  wholes: readonly Traits[],
  others: readonly Traits[],
  partnerOf: ReadonlyMap<number, number>,
  partnerBack: ReadonlyMap<number, number>,
  weightOf: (whole: number, piece: number) => number,
  vocabulary: Vocabulary,
): Hypothesis[] {
  const found: Hypothesis[] = [];
  const free = others.flatMap((_, j) => (partnerBack.has(j) ? [] : [j]));
  if (free.length === 0) return found;
  for (const [i, whole] of wholes.entries()) {
    const own = partnerOf.get(i);
    const pool = [...free, ...(own === undefined ? [] : [own])].filter((j) => maybePiece(whole, others[j] as Traits));
    if (pool.length < 2 || pool.length > MOST_CANDIDATES) continue;
    for (const pieces of choices(pool)) {
      if (own !== undefined && !pieces.includes(own)) continue;
      const because = divisionWeights(
        whole,
        pieces.map((j) => others[j] as Traits),
        vocabulary,
      );
      if (because === undefined) continue;
      const single = Math.max(0, ...pieces.map((j) => weightOf(i, j)));
      const gain = because.reduce((sum, { weight }) => sum + weight, 0) + RARE - Math.log(wholes.length) - single;
      if (gain >= CLEARLY) found.push({ whole: i, pieces, gain, because });
    }
  }
  return found;
}

/** Whether nothing known speaks against one being a part of the other. */
function maybePiece(whole: Traits, piece: Traits): boolean {
  const alike = (a: string | number | null, b: string | number | null) => a === null || b === null || a === b;
  return (
    alike(whole.load, piece.load) &&
    alike(whole.phases, piece.phases) &&
    (whole.points === null || piece.points === null || piece.points < whole.points) &&
    (whole.length === null || piece.length === null || piece.length[0] < whole.length[1])
  );
}

/** Every two and every three of the candidates. */
function* choices(pool: readonly number[]): Generator<readonly number[]> {
  const sorted = [...pool].sort((a, b) => a - b);
  for (const [x, a] of sorted.entries()) {
    for (const [y, b] of sorted.slice(x + 1).entries()) {
      yield [a, b];
      for (const c of sorted.slice(x + y + 2)) yield [a, b, c];
    }
  }
}

/** The weight of several circuits being the parts of one; undefined where neither points nor lengths can be added up. */
function divisionWeights(
  whole: Traits,
  pieces: readonly Traits[],
  vocabulary: Vocabulary,
): readonly TraitWeight[] | undefined {
  const weights: TraitWeight[] = [];
  const points = pieces.map((piece) => piece.points);
  if (whole.points !== null && points.every((count) => count !== null)) {
    const sum = points.reduce((all, count) => all + count, 0);
    weights.push({ trait: "points", weight: closeness(Math.log(sum / whole.points), POINTS) });
  }
  const lengths = pieces.map(({ length }) => length);
  if (whole.length !== null && lengths.every((length) => length !== null)) {
    const [low, high] = [0, 1].map((end) => lengths.reduce((all, length) => all + (length[end] as number), 0)) as [
      number,
      number,
    ];
    const ratio = apart([low, high], whole.length);
    weights.push({ trait: "length", weight: closeness(ratio, LENGTH) });
  }
  if (weights.length === 0) return undefined;
  const known = (trait: "load" | "line") => whole[trait] !== null && pieces.every((piece) => piece[trait] !== null);
  if (known("load")) weights.push({ trait: "load", weight: LIKE.load });
  if (known("line"))
    weights.push({ trait: "line", weight: LIKE.line[pieces.every(({ line }) => line === whole.line) ? 1 : 0] });
  if (whole.shape === "ring" && pieces.every(({ shape }) => shape === "radial"))
    weights.push({ trait: "shape", weight: LIKE.rings });
  // Sorted before they are added, so that the order in which pieces stand changes nothing.
  const likeness = pieces
    .map(({ words }) => vocabulary.likeness(whole.words, words))
    .filter((part) => part !== undefined);
  if (likeness.length === pieces.length) {
    const mean = likeness.sort((a, b) => a - b).reduce((sum, part) => sum + part, 0) / likeness.length;
    const [against, favour] = LIKE.words;
    weights.push({ trait: "words", weight: against + (favour - against) * mean });
  }
  return weights;
}
