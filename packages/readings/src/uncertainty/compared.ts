import {
  type AcceptanceRule,
  type Apart,
  type Compared,
  type ComparedConformity,
  type ConformityNote,
  type ErrorSource,
  type Evidence,
  TIE_SLACK,
  type Unit,
  type Verdict,
} from "@good-grounds/core";
import { chanceAtMost } from "./sum-of-errors.ts";
import { atCorner, chanceInHand, type Line, lineOf, REACH, tangentOf } from "./surface.ts";
import { Tape } from "./tape.ts";

/** Coverage factor of the expanded uncertainty, about 95 % (GUM 6.3.3). */
export const COVERAGE = 2;

interface Statement {
  readonly probability: number | null;
  readonly lowest: number;
  readonly highest: number;
  readonly decision: Readonly<Record<AcceptanceRule, Verdict>>;
}

/** Everything that is worked out of a comparison before it is decided. */
interface Doubt {
  readonly tape: Tape;
  /** All causes move. */
  readonly free: Line;
  /** Ranges at their worst and at their best; only the instruments' errors move. */
  readonly worst: Line;
  readonly best: Line;
  /** With every cause at its end, to the worse and to the better side. */
  readonly corners: readonly [worse: number, better: number];
  /** What counts as equal. */
  readonly tie: number;
}

/**
 * How sure a comparison is: its probability, what adds to the doubt, and what it comes to under each rule. Errors of one
 * instrument act on all its readings together. Undefined where an input is not known or the lines were not kept.
 * Sources: JCGM 100:2008 5.1.2 and 5.2.2 (propagation), 6.2 (expanded uncertainty), JCGM 106:2012 7.3 and 8.3.
 */
export function comparedConformity(compared: Compared): ComparedConformity | undefined {
  if (compared.verdict === "not-known" || compared.from.length < 2) return undefined;
  const doubt = doubtOf(compared);
  const { tape, worst, best } = doubt;
  const isLimit = compared.relation === "at-most" || compared.relation === "at-least";
  const statement = isLimit
    ? withoutBareRanges(againstLimit(doubt), doubt)
    : compared.apart === undefined
      ? betweenAccounts(doubt, compared.relation)
      : asDecided(compared.apart);
  const notes = new Set<ConformityNote>(tape.errors.notes);
  if (isBent(doubt)) notes.add("curved");
  const standard = Math.max(finite(worst.standard), finite(best.standard));
  return {
    matter: compared.matter,
    relation: compared.relation,
    unit: (compared.from[0] as Evidence<Unit>).term.unit,
    difference: finite(doubt.free.middle),
    standard,
    expanded: COVERAGE * standard,
    ...statement,
    notes: [...notes],
    budget: budgetOf(tape),
  };
}

/** Whether being curved has a part in what is said: not where the limit lies beyond every end of the errors. */
function isBent({ free, worst, best, corners, tie }: Doubt): boolean {
  return beyondReach(free, corners, tie) === undefined && (free.curved || worst.curved || best.curved);
}

/** 1 or 0 where the limit is met or missed at every end of the errors alike. */
function beyondReach(tangent: Line, corners: Doubt["corners"], tie: number): 0 | 1 | undefined {
  if (tangent.curved) return undefined;
  return corners[0] >= -tie ? 1 : corners[1] < -tie ? 0 : undefined;
}

function doubtOf(compared: Compared): Doubt {
  const tape = new Tape(compared);
  const { causes } = tape.errors;
  const everything = causes.map(() => true);
  const instruments = causes.map(({ kind }) => kind !== "range");
  const middle = new Float64Array(causes.length);
  const tangent = tangentOf(tape, middle, everything);
  const { slopes } = tangent;
  const corners = [atCorner(tape, middle, slopes, -1), atCorner(tape, middle, slopes, 1)] as const;
  const tie = TIE_SLACK * Math.abs(finite((compared.from[1] as Evidence<Unit>).value));
  // Where the limit lies beyond every end of the errors, nothing has to be laid against it.
  const lay = beyondReach(tangent, corners, tie) === undefined ? lineOf : tangentOf;
  const free = lay(tape, middle, everything);
  if (!instruments.includes(false)) return { tape, free, worst: free, best: free, corners, tie };
  const ranges = (side: -1 | 1) =>
    middle.map((zero, i) => (instruments[i] === true ? zero : side * REACH * Math.sign(slopes[i] as number)));
  return {
    tape,
    free,
    worst: lay(tape, ranges(-1), instruments),
    best: lay(tape, ranges(1), instruments),
    corners,
    tie,
  };
}

/** Two accounts whose difference was held against the errors between them: the same judgement and the same chance. */
function asDecided({ verdict, chance }: Apart): Statement {
  return { probability: chance, lowest: chance, highest: chance, decision: both(verdict) };
}

/** A range alone says where a value may lie, not how likely it is to lie there: the verdict stands without a figure. */
function withoutBareRanges(statement: Statement, { tape, free }: Doubt): Statement {
  const { causes } = tape.errors;
  const measured = causes.some(({ kind }, i) => kind !== "range" && Math.abs(free.slopes[i] as number) > 0);
  const { probability } = statement;
  return measured || probability === 0 || probability === 1 ? statement : { ...statement, probability: null };
}

/** A limit: JCGM 106 7.3 for the probability, 8.2 (simple acceptance) and 8.3 (guard band w = U) for the decision. */
function againstLimit({ tape, free, worst, best, corners, tie }: Doubt): Statement {
  const sure = beyondReach(free, corners, tie);
  const ends = sure ?? (worst.curved ? 0 : chance(worst, tie));
  const top = sure ?? (best.curved ? 1 : chance(best, tie));
  const middle = sure ?? (free.curved ? null : chance(free, tie));
  const [lowest, highest] = [Math.min(ends, middle ?? ends), Math.max(top, middle ?? top)];
  const simple = decided(worst.middle, best.middle, tie);
  const guard = (line: Line) => COVERAGE * line.standard;
  const guarded =
    sure === undefined && (worst.curved || best.curved)
      ? "too-near"
      : decided(worst.middle - guard(worst), best.middle + guard(best), tie);
  return openEnded(tape, { probability: middle, lowest, highest, decision: { simple, guarded } });
}

function chance(line: Line, tie: number): number {
  return line.standard === 0 ? (line.middle >= -tie ? 1 : 0) : chanceInHand(line);
}

/** What is neither met at the worst nor missed at the best is too near; so is what has no figure. */
function decided(worst: number, best: number, tie: number): Verdict {
  if (worst >= -tie) return "met";
  return best < -tie ? "not-met" : "too-near";
}

/** A display at the end of its range says nothing on one side: what it cannot bear out is taken back. */
function openEnded(tape: Tape, statement: Statement): Statement {
  const open = openings(tape);
  if (open.length === 0) return statement;
  const better = open.includes(1);
  const worse = open.includes(-1);
  const bear = (verdict: Verdict): Verdict =>
    (verdict === "met" && worse) || (verdict === "not-met" && better) ? "too-near" : verdict;
  const decision = { simple: bear(statement.decision.simple), guarded: bear(statement.decision.guarded) };
  return {
    probability: decision.simple === "too-near" ? null : statement.probability,
    lowest: worse ? 0 : statement.lowest,
    highest: better ? 1 : statement.highest,
    decision,
  };
}

/**
 * Two accounts of one thing. The probability is the chance of a difference as large or larger if they are one. They agree
 * where the difference is no more than its expanded uncertainty, wherever in their ranges the rest lies; there is
 * nothing to guard, so that both rules decide alike.
 */
function betweenAccounts(doubt: Doubt, relation: Compared["relation"]): Statement {
  const { tape, free, worst, best, corners, tie } = doubt;
  const side = relation === "not-below" ? -1 : relation === "not-above" ? 1 : 0;
  const chanceOf = (line: Line, apart: number): number => {
    if (line.standard === 0) return side * apart > tie || (side === 0 && Math.abs(apart) > tie) ? 0 : 1;
    const beyond = chanceAtMost(side === 0 ? -Math.abs(apart) : -side * apart, line.slopes);
    return side === 0 ? Math.min(1, 2 * beyond) : beyond;
  };
  const meets = side === 0 ? (low: number, high: number) => low <= tie && high >= -tie : oneSided(side, tie);
  const open = openings(tape);
  if (isBent(doubt)) {
    const [low, high] = opened(Math.min(...corners), Math.max(...corners), open);
    // At a corner that is no number nothing can be said.
    if (!(low <= high)) return { probability: null, lowest: 0, highest: 1, decision: both("too-near") };
    const met = meets(low, high);
    return { probability: null, lowest: 0, highest: met ? 1 : 0, decision: both(met ? "met" : "not-met") };
  }
  const guard = Math.max(worst.standard, best.standard) * COVERAGE;
  const [low, high] = opened(Math.min(worst.middle, best.middle), Math.max(worst.middle, best.middle), open);
  const met = meets(low - guard, high + guard);
  const chanceFree = chanceOf(free, free.onLine);
  const ends = [chanceOf(worst, worst.onLine), chanceOf(best, best.onLine), chanceFree];
  return {
    // Beyond the end of a display there is no distribution; only that the two lie apart can be told.
    probability: open.length > 0 && met ? null : chanceFree,
    lowest: open.length > 0 ? 0 : Math.min(...ends),
    // Somewhere between two ends the accounts may be one and the same.
    highest: low < high && meets(low, high) ? 1 : Math.max(...ends),
    decision: both(met ? "met" : "not-met"),
  };
}

/** A difference that may be any amount larger or smaller than it is shown. */
function opened(low: number, high: number, open: readonly number[]): readonly [low: number, high: number] {
  return [open.includes(-1) ? Number.NEGATIVE_INFINITY : low, open.includes(1) ? Number.POSITIVE_INFINITY : high];
}

function oneSided(side: -1 | 1, tie: number): (low: number, high: number) => boolean {
  return side === -1 ? (_low, high) => high >= -tie : (low) => low <= tie;
}

function openings(tape: Tape): readonly number[] {
  tape.run(new Float64Array(tape.errors.causes.length));
  return tape.openness();
}

function both(verdict: Verdict): Readonly<Record<AcceptanceRule, Verdict>> {
  return { simple: verdict, guarded: verdict };
}

function budgetOf(tape: Tape): readonly ErrorSource[] {
  const { causes } = tape.errors;
  tape.run(new Float64Array(causes.length));
  const slopes = tape.gradient.map((slope) => (Number.isFinite(slope) ? slope : 0));
  const variance = slopes.reduce((sum, slope) => sum + slope * slope, 0);
  return causes
    .map((cause, i) => {
      const contribution = Math.abs(slopes[i] as number);
      return { ...cause, contribution, share: variance > 0 ? contribution ** 2 / variance : 0 };
    })
    .filter(({ contribution }) => contribution > 0)
    .sort((a, b) => b.contribution - a.contribution);
}

function finite(value: number): number {
  return Number.isFinite(value) ? value : 0;
}
