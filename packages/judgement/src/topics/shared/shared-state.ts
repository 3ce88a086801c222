import { ALWAYS, all, any, type Expression, NEVER, not } from "@good-grounds/core";

/** A state of a thing that many topics ask of: worked out from facts by rules, once, in the same words everywhere. */
export interface SharedState {
  readonly id: string;
  /** What it is a state of. */
  readonly of: string;
  /** What the state says, as a clause that its values complete. */
  readonly words: string;
  /** Best first; each but the first with the rule under which it is so. The worst value whose rule holds is the state. */
  readonly values: Readonly<Record<string, { readonly words: string; readonly when?: Expression }>>;
}

/** The rule under which a state has one of these values; throws where the state has no such value. */
export function stateIs({ id, values }: SharedState, ...wanted: readonly string[]): Expression {
  const names = Object.keys(values);
  const rules = Object.values(values).map(({ when }) => when);
  const parts = wanted.map((value) => {
    const at = names.indexOf(value);
    if (at < 0) throw new Error(`${id}: "${value}" is none of ${names.join(", ")}`);
    const own = at === 0 ? ALWAYS : (rules[at] ?? NEVER);
    const worse = rules.slice(at + 1).flatMap((rule) => (rule === undefined ? [] : [rule]));
    return worse.length === 0 ? own : all(own, not(any(...worse)));
  });
  const [only] = parts;
  return parts.length === 1 && only !== undefined ? only : any(...parts);
}
