import { UNIT_SYMBOL } from "../quantity/unit.ts";
import { isFault, parseWritten } from "../quantity/written.ts";
import type { Expression } from "./expression.ts";
import type { FactOf, QuantityFact } from "./fact.ts";

/** Relative slack within which a value as typed counts as the limit, as everywhere in this project. */
const SLACK = 1e-9;

/** A limit of a rule: the cells on either side part at `at`, which itself belongs to the upper cell unless `above`. */
interface Cut {
  readonly at: number;
  readonly above: boolean;
  readonly text: string;
}

/** The values of a fact as far as rules can tell them apart. */
export interface Cells {
  /** Values by number, from best to worst where the fact has an order. */
  readonly values: readonly string[];
  /** Clauses by number. */
  readonly words: readonly string[];
  /** Whether a later cell is worse than an earlier one. */
  readonly ordered: boolean;
  /** For quantities: the numbers of the cells between two values. */
  readonly between?: (low: number, high: number) => readonly number[];
  /** For quantities: the numbers of the cells for which a limit rule holds. */
  readonly beyond?: (op: "at-least" | "more-than", limit: string) => readonly number[];
}

const YES_NO: Readonly<Record<"yes" | "no", readonly string[]>> = {
  yes: Object.freeze(["no", "yes"]),
  no: Object.freeze(["yes", "no"]),
};

/** The cells of a fact under the rules that speak of it. */
export function cellsOf(name: string, fact: FactOf, leaves: readonly Expression[]): Cells {
  if (fact.kind === "yes-no") {
    const values = YES_NO[fact.worse ?? "yes"];
    return { values, words: values.map((value) => fact[value as "yes" | "no"]), ordered: fact.worse !== null };
  }
  if (fact.kind === "choice")
    return { values: Object.keys(fact.values), words: Object.values(fact.values), ordered: fact.ordered };
  return quantityCells(fact, cutsOf(name, fact, leaves));
}

function cutsOf(name: string, fact: QuantityFact, leaves: readonly Expression[]): readonly Cut[] {
  const cuts = new Map<string, Cut>();
  for (const leaf of leaves) {
    if ((leaf.op !== "at-least" && leaf.op !== "more-than") || leaf.fact !== name) continue;
    const cut = cutAt(fact, leaf.limit, leaf.op === "more-than");
    cuts.set(`${cut.at} ${cut.above}`, cut);
  }
  return [...cuts.values()].sort((a, b) => a.at - b.at || Number(a.above) - Number(b.above));
}

function cutAt(fact: QuantityFact, limit: string, above: boolean): Cut {
  const written = parseWritten(limit, fact.unit);
  if (isFault(written)) throw new Error(`${fact.name}: the limit "${limit}" is not written in ${fact.unit}`);
  return { at: written.value, above, text: limit };
}

function quantityCells(fact: QuantityFact, cuts: readonly Cut[]): Cells {
  const count = cuts.length + 1;
  // Cells are numbered from best to worst, so they run downwards where less is worse.
  const numbered = (rank: number) => (fact.worse === "lower" ? count - 1 - rank : rank);
  const rankOf = (value: number) => cuts.filter((cut) => passes(value, cut)).length;
  const ranks = Array.from({ length: count }, (_, number) => numbered(number));
  return {
    values: ranks.map((rank) => (cuts.length === 0 ? "any" : rangeText(cuts, rank))),
    words: ranks.map((rank) => `${fact.name} ${cuts.length === 0 ? "any" : rangeText(cuts, rank)}`),
    ordered: fact.worse !== null,
    between(low, high) {
      const [from, to] = [rankOf(low), rankOf(high)];
      return Array.from({ length: to - from + 1 }, (_, i) => numbered(from + i));
    },
    beyond(op, limit) {
      const cut = cutAt(fact, limit, op === "more-than");
      const from = cuts.findIndex(({ at, above }) => at === cut.at && above === cut.above) + 1;
      if (from === 0) throw new Error(`${fact.name}: no rule of the subject has the limit "${limit}"`);
      return Array.from({ length: count - from }, (_, i) => numbered(from + i));
    },
  };
}

function passes(value: number, { at, above }: Cut): boolean {
  const slack = Math.abs(at) * SLACK;
  return above ? value > at + slack : value >= at - slack;
}

function rangeText(cuts: readonly Cut[], rank: number): string {
  const from = cuts[rank - 1];
  const to = cuts[rank];
  const lower = from === undefined ? "" : from.above ? `more than ${from.text}` : `${from.text} or more`;
  const upper = to === undefined ? "" : to.above ? `${to.text} or less` : `less than ${to.text}`;
  return lower === "" ? upper : upper === "" ? lower : `${lower}, ${upper}`;
}

/** The unit a quantity fact is answered in, as written. */
export function unitSymbol(fact: QuantityFact): string {
  return UNIT_SYMBOL[fact.unit];
}
