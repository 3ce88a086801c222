import type { Term } from "./notions.ts";
import { SITUATIONS } from "./situations.ts";

/** How much a dangerous situation counts, and what is left of that for each topic further down its list. */
const DANGER = 26;
const NEXT = 0.85;
/** How much more a situation counts that is told by two things or a thing and a place. */
const NARROWER = 1.3;

/** Notions of which all have to be said, by the ways in which a situation may be told. */
type Ways = readonly (readonly string[])[];

const TOLD = SITUATIONS.map(([states, of, topics]) => ({
  states: waysOf(states),
  of: waysOf(of),
  topics: topics.split(" "),
}));

function waysOf(text: string): Ways {
  return text.split(" ").map((one) => one.split("+"));
}

/** Topics of the dangerous situations that were typed, with how much each counts for it. */
export function dangersIn(terms: readonly Term[]): ReadonlyMap<string, number> {
  const said = new Set(terms.flatMap(({ notions }) => notions));
  const told = (ways: Ways) => ways.filter((all) => all.every((one) => said.has(one)));
  const dangers = new Map<string, number>();
  for (const { states, of, topics } of TOLD) {
    const things = told(of);
    if (things.length === 0 || told(states).length === 0) continue;
    const narrower = things.some(({ length }) => length > 1) ? NARROWER : 1;
    for (const [place, id] of topics.entries())
      dangers.set(id, Math.max(dangers.get(id) ?? 0, DANGER * narrower * NEXT ** place));
  }
  return dangers;
}
