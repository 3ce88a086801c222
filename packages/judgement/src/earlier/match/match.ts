import type { MatchTrait, TraitWeight } from "@good-grounds/core";
import type { Board, Circuit, Installation } from "@good-grounds/inspection";
import { type Assignment, assign, type Edge } from "./assignment.ts";
import { matchBoards } from "./boards.ts";
import { matchByName } from "./by-name.ts";
import { splitsOf } from "./splits.ts";
import { type Traits, traitsOf } from "./traits.ts";
import { total, traitWeights } from "./weight.ts";
import { Vocabulary } from "./words.ts";

/** A circuit of the earlier file and one of the present file held to be the same. */
export interface Pair {
  readonly then: Circuit;
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
export interface OpenGroup {
  readonly then: readonly Circuit[];
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
export const CONFIDENT = 0.9;

/** An assignment that falls short of the best by no more than this is a candidate worth showing: odds of 1 to 20. */
const NEAR = Math.log(20);

/** More circuits than this in one file are not weighed against each other: the work grows with the cube. */
export const MOST_CIRCUITS = 400;

/** What it speaks for or against two circuits that their boards are held to be one. */
const BOARD: readonly [against: number, favour: number] = [-1.5, 1];

/**
 * Matches the circuits of an earlier inspection with those of the present one, whatever they are called and numbered.
 * The same result in whatever order circuits and boards stand, and with the files exchanged.
 */
export function matchCircuits(then: Installation, now: Installation): Matching {
  if (then.circuits.length > MOST_CIRCUITS || now.circuits.length > MOST_CIRCUITS) return matchByName(then, now);
  const before = then.circuits.map(traitsOf);
  const after = now.circuits.map(traitsOf);
  const vocabulary = new Vocabulary([...before, ...after].map(({ words }) => words));
  const weights = before.map((a) => after.map((b) => traitWeights(a, b, vocabulary)));
  // Any two of so many circuits are the same one only so often; how often is part of the odds.
  const prior = Math.log(Math.max(1, before.length, after.length));
  const edgesOf = (more: (a: Traits, b: Traits) => number): Edge[] =>
    weights.flatMap((row, i) =>
      row.map((list, j) => ({ row: i, column: j, weight: total(list) - prior + more(before[i]!, after[j]!) })),
    );
  const first = assign(before.length, after.length, edgesOf(() => 0));
  const boards = matchBoards(then, now, pairsOf(first, before, after));
  const several = then.boards.length > 1 || now.boards.length > 1;
  const ofBoard = (a: Traits, b: Traits) => {
    const partner = boards.get(a.circuit.board);
    return several && partner !== undefined ? BOARD[partner === b.circuit.board ? 1 : 0] : 0;
  };
  const edges = edgesOf(ofBoard);
  const assignment = assign(before.length, after.length, edges);
  const because = (i: number, j: number): readonly TraitWeight[] => {
    const board = ofBoard(before[i]!, after[j]!);
    const list = weights[i]?.[j] ?? [];
    return board === 0 ? list : [...list, { trait: "board" as MatchTrait, weight: board }];
  };
  const confidence = confidences(assignment, after.length);
  const partnerOf = new Map(assignment.columnOf.entries().filter(([i, j]) => j >= 0 && (confidence[i] as number) >= CONFIDENT));
  const weightOf = (i: number, j: number) => total(because(i, j)) - prior;
  const divided = splitsOf(before, after, partnerOf, weightOf, vocabulary);
  const takenThen = new Set(divided.flatMap(({ then: list }) => list));
  const takenNow = new Set(divided.flatMap(({ now: list }) => list));
  const pairs = [...partnerOf]
    .filter(([i, j]) => !takenThen.has(i) && !takenNow.has(j))
    .map(([i, j]) => ({
      then: before[i]!.circuit,
      now: after[j]!.circuit,
      confidence: confidence[i] as number,
      because: because(i, j),
    }));
  for (const [i, j] of partnerOf) {
    takenThen.add(i);
    takenNow.add(j);
  }
  const unsettled = unsettledOf(assignment, before, after, takenThen, takenNow);
  for (const { then: list } of unsettled) for (const circuit of list) takenThen.add(before.findIndex((one) => one.circuit === circuit));
  for (const { now: list } of unsettled) for (const circuit of list) takenNow.add(after.findIndex((one) => one.circuit === circuit));
  const whole = (side: "then" | "now") =>
    divided
      .filter((one) => one[side].length === 1)
      .map(({ then: a, now: b, ...rest }) => {
        const [one, many] = side === "then" ? [a, b] : [b, a];
        const [ones, manies] = side === "then" ? [before, after] : [after, before];
        return { whole: ones[one[0]!]!.circuit, pieces: many.map((k) => manies[k]!.circuit), ...rest };
      });
  return {
    pairs,
    splits: whole("then"),
    merges: whole("now"),
    unsettled,
    onlyThen: before.filter((_, i) => !takenThen.has(i)).map(({ circuit }) => circuit),
    onlyNow: after.filter((_, j) => !takenNow.has(j)).map(({ circuit }) => circuit),
    boards,
    byNameOnly: false,
  };
}

function pairsOf({ columnOf }: Assignment, before: readonly Traits[], after: readonly Traits[]) {
  return columnOf.flatMap((j, i) => {
    const [a, b] = [before[i], after[j]];
    return a === undefined || b === undefined ? [] : [[a.circuit, b.circuit] as const];
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

/** Groups of what is left over, joined by every assignment that is near the best. */
function unsettledOf(
  { excess }: Assignment,
  before: readonly Traits[],
  after: readonly Traits[],
  takenThen: ReadonlySet<number>,
  takenNow: ReadonlySet<number>,
): readonly OpenGroup[] {
  const near = excess.filter((one) => one.excess < NEAR && !takenThen.has(one.row) && !takenNow.has(one.column));
  const group = new Map<string, Set<string>>();
  for (const { row, column } of near) {
    const joined = new Set([`t${row}`, `n${column}`]);
    for (const key of [...joined]) for (const other of group.get(key) ?? []) joined.add(other);
    for (const key of joined) group.set(key, joined);
  }
  return [...new Set(group.values())].map((keys) => ({
    then: before.filter((_, i) => keys.has(`t${i}`)).map(({ circuit }) => circuit),
    now: after.filter((_, j) => keys.has(`n${j}`)).map(({ circuit }) => circuit),
  }));
}
