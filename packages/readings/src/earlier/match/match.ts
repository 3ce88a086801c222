import type { TraitWeight } from "@good-grounds/core";
import type { Board, Circuit, Installation } from "@good-grounds/inspection";
import { type Assignment, assign } from "./assignment.ts";
import { matchByName } from "./by-name.ts";
import { Odds } from "./odds.ts";
import { splitsOf } from "./splits.ts";
import type { Traits } from "./traits.ts";

/** A circuit of the earlier file and one of the present file held to be the same. */
interface Pair {
  readonly past: Circuit;
  readonly now: Circuit;
  /** 0 to 1: how far every other assignment falls short of this one. */
  readonly confidence: number;
  readonly because: readonly TraitWeight[];
}

/** One circuit that has become several, or several that have become one. */
export interface Divided {
  readonly whole: Circuit;
  readonly pieces: readonly Circuit[];
  readonly confidence: number;
  readonly because: readonly TraitWeight[];
}

/** Circuits that may be the same, without enough to tell which is which, or whether at all. */
interface OpenGroup {
  readonly past: readonly Circuit[];
  readonly now: readonly Circuit[];
}

export interface Matching {
  readonly pairs: readonly Pair[];
  readonly splits: readonly Divided[];
  readonly merges: readonly Divided[];
  readonly unsettled: readonly OpenGroup[];
  readonly onlyThen: readonly Circuit[];
  readonly onlyNow: readonly Circuit[];
  readonly boards: ReadonlyMap<Board, Board>;
  /** True where there were too many circuits to weigh against each other, and only names were compared. */
  readonly byNameOnly: boolean;
}

/** From this confidence on a pair is taken as the same circuit; below it is shown as unsettled. */
const CONFIDENT = 0.9;

/** An assignment that falls short of the best by no more than this is a candidate worth showing: odds of 1 to 20. */
const NEAR = Math.log(20);

/** More circuits than this in one file are not weighed against each other: the work grows with the cube. */
const MOST_CIRCUITS = 300;

/**
 * Matches the circuits of an earlier inspection with those of the present one, whatever they are called and numbered.
 * The same result in whatever order circuits and boards stand, and with the files exchanged.
 */
export function matchCircuits(past: Installation, now: Installation): Matching {
  if (past.circuits.length > MOST_CIRCUITS || now.circuits.length > MOST_CIRCUITS) return matchByName(past, now);
  const odds = new Odds(past, now);
  const { before, after, boards } = odds;
  const assignment = assign(before.length, after.length, odds.edges());
  const confidence = confidences(assignment, after.length);
  const partnerOf = new Map<number, number>();
  for (const [i, j] of assignment.columnOf.entries())
    if (j >= 0 && (confidence[i] as number) >= CONFIDENT) partnerOf.set(i, j);
  const divided = splitsOf(before, after, partnerOf, (i, j) => odds.weight(i, j), odds.vocabulary);
  const [rows, columns] = [new Set(divided.flatMap((one) => one.past)), new Set(divided.flatMap((one) => one.now))];
  const pairs = [...partnerOf].filter(([i, j]) => !rows.has(i) && !columns.has(j));
  for (const [i, j] of partnerOf) {
    rows.add(i);
    columns.add(j);
  }
  const unsettled = unsettledOf(assignment, rows, columns);
  for (const group of unsettled) {
    for (const i of group.past) rows.add(i);
    for (const j of group.now) columns.add(j);
  }
  const [ofPast, ofNow] = [circuitsOf(before), circuitsOf(after)];
  return {
    pairs: pairs.map(([i, j]) => ({
      past: past.circuits[i] as Circuit,
      now: now.circuits[j] as Circuit,
      confidence: confidence[i] as number,
      because: odds.because(i, j),
    })),
    splits: divided
      .filter((one) => one.past.length === 1)
      .map((one) => ({ ...one, whole: ofPast(one.past)[0] as Circuit, pieces: ofNow(one.now) })),
    merges: divided
      .filter((one) => one.now.length === 1)
      .map((one) => ({ ...one, whole: ofNow(one.now)[0] as Circuit, pieces: ofPast(one.past) })),
    unsettled: unsettled.map((group) => ({ past: ofPast(group.past), now: ofNow(group.now) })),
    onlyThen: past.circuits.filter((_, i) => !rows.has(i)),
    onlyNow: now.circuits.filter((_, j) => !columns.has(j)),
    boards,
    byNameOnly: false,
  };
}

function circuitsOf(traits: readonly Traits[]) {
  return (positions: readonly number[]): readonly Circuit[] =>
    positions.flatMap((i) => {
      const one = traits[i];
      return one === undefined ? [] : [one.circuit];
    });
}

/**
 * For each row its confidence: the weight of the chosen pair against all ways in which its row, or its column, goes
 * elsewhere; the lesser of the two, so that neither file is preferred.
 */
function confidences({ columnOf, excess, rowAlone, columnAlone }: Assignment, columns: number): readonly number[] {
  const ofRow = columnOf.map((_, i) => Math.exp(-(rowAlone[i] as number)));
  const ofColumn = Array.from({ length: columns }, (_, j) => Math.exp(-(columnAlone[j] as number)));
  for (const one of excess) {
    if (columnOf[one.row] === one.column) continue;
    (ofRow[one.row] as number) += Math.exp(-one.excess);
    (ofColumn[one.column] as number) += Math.exp(-one.excess);
  }
  return columnOf.map((j, i) => (j < 0 ? 0 : 1 / (1 + Math.max(ofRow[i] as number, ofColumn[j] as number))));
}

/** Groups of what is left over, by positions, joined by every assignment that is near the best. */
function unsettledOf({ excess }: Assignment, rows: ReadonlySet<number>, columns: ReadonlySet<number>) {
  const near = excess.filter((one) => one.excess < NEAR && !rows.has(one.row) && !columns.has(one.column));
  const groupOf = new Map<string, { readonly past: Set<number>; readonly now: Set<number> }>();
  for (const { row, column } of near) {
    const joined = { past: new Set([row]), now: new Set([column]) };
    for (const group of [groupOf.get(`past ${row}`), groupOf.get(`now ${column}`)]) {
      for (const i of group?.past ?? []) joined.past.add(i);
      for (const j of group?.now ?? []) joined.now.add(j);
    }
    for (const i of joined.past) groupOf.set(`past ${i}`, joined);
    for (const j of joined.now) groupOf.set(`now ${j}`, joined);
  }
  const sorted = (list: ReadonlySet<number>) => [...list].sort((a, b) => a - b);
  return [...new Set(groupOf.values())].map((group) => ({ past: sorted(group.past), now: sorted(group.now) }));
}
