import type { Term } from "./notions.ts";
import { SITUATIONS } from "./situations.ts";

/** How much a dangerous situation counts, and what is left of that for each topic further down its list. */
const DANGER = 14;
const NEXT = 0.85;
/** How much more a situation counts that is told by two things or a thing and a place. */
const NARROWER = 1.3;

interface Told {
  readonly states: readonly string[];
  readonly of: readonly (readonly string[])[];
  readonly topics: readonly string[];
}

const TOLD: readonly Told[] = SITUATIONS.map(([states, of, topics]) => ({
  states: states.split(" "),
  of: of.split(" ").map((one) => one.split("+")),
  topics: topics.split(" "),
}));

/** Topics of the dangerous situations that were typed, with how much each counts for it. */
export function dangersIn(terms: readonly Term[]): ReadonlyMap<string, number> {
  const said = new Set(terms.flatMap(({ notions }) => notions));
  const dangers = new Map<string, number>();
  for (const { states, of, topics } of TOLD) {
    if (!states.some((state) => said.has(state))) continue;
    const told = of.filter((all) => all.every((one) => said.has(one)));
    if (told.length === 0) continue;
    const narrower = told.some(({ length }) => length > 1) ? NARROWER : 1;
    for (const [place, id] of topics.entries())
      dangers.set(id, Math.max(dangers.get(id) ?? 0, DANGER * narrower * NEXT ** place));
  }
  return dangers;
}
