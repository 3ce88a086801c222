import { COMPUTATIONS, givenFromText } from "@good-grounds/computations";
import { type Evidence, type Ground, isKnown, type Judgement, nodesOf, Reckoner, type Unit } from "@good-grounds/core";

/** What one of our computations gives: its judgement, and every quantity of the result by term id in the coherent unit. */
export interface Answer {
  readonly judgement: Judgement | undefined;
  readonly values: ReadonlyMap<string, readonly number[]>;
}

/** Runs a computation with figures given as text, the way a published example states them. */
export function compute(id: string, given: Record<string, string | string[]>): Answer {
  const one = COMPUTATIONS.get(id);
  if (one === undefined) throw new Error(`no computation is called ${id}`);
  const made = givenFromText(one.needs, given);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  const reckon = new Reckoner(true);
  const roots: readonly Ground[] =
    "conclude" in one
      ? (({ judgement, beside }) => [judgement, ...beside])(one.conclude(made.given, reckon))
      : one.compute(made.given, reckon).results;
  const values = new Map<string, number[]>();
  for (const root of roots) {
    for (const node of nodesOf(root)) {
      if (!("term" in node) || !isKnown(node as Evidence<Unit>)) continue;
      const list = values.get(node.term.id) ?? [];
      list.push(node.value);
      values.set(node.term.id, list);
    }
  }
  const [first] = roots;
  return { judgement: "conclude" in one ? (first as Judgement) : undefined, values };
}

/** The distance of the nearest quantity of a term to a wanted value. */
export function distance(answer: Answer, term: string, wanted: number): number {
  return Math.min(...(answer.values.get(term) ?? []).map((value) => Math.abs(value - wanted)));
}
