import { ALWAYS, all, any, type Expression, is, NEVER, not, stateIs } from "@good-grounds/core";

/** What is settled before anything is asked: the values left to some facts, and to states that follow from them. */
export interface Settled {
  readonly facts: ReadonlyMap<string, readonly string[]>;
  readonly states: ReadonlyMap<string, readonly string[]>;
}

/** A rule where some facts and states are known to have one of a few values: what is settled by that is taken out. */
export function restricted(rule: Expression, settled: Settled): Expression {
  switch (rule.op) {
    case "is":
      return narrowed(rule, settled.facts.get(rule.fact), rule.values, (left) => is(rule.fact, ...left));
    case "state":
      return narrowed(rule, settled.states.get(rule.state), rule.values, (left) => stateIs(rule.state, ...left));
    case "not": {
      const of = restricted(rule.of, settled);
      return of.op === "always" ? NEVER : of.op === "never" ? ALWAYS : not(of);
    }
    case "all":
      return joined(rule.of, settled, "never", "always", NEVER, ALWAYS, all);
    case "any":
      return joined(rule.of, settled, "always", "never", ALWAYS, NEVER, any);
    default:
      return rule;
  }
}

function narrowed(
  rule: Expression,
  possible: readonly string[] | undefined,
  values: readonly string[],
  made: (left: readonly string[]) => Expression,
): Expression {
  if (possible === undefined) return rule;
  const left = values.filter((value) => possible.includes(value));
  if (left.length === 0) return NEVER;
  return left.length === possible.length ? ALWAYS : made(left);
}

function joined(
  of: readonly Expression[],
  settled: Settled,
  decides: Expression["op"],
  drops: Expression["op"],
  decided: Expression,
  empty: Expression,
  join: (...of: readonly Expression[]) => Expression,
): Expression {
  const parts = of.map((one) => restricted(one, settled)).filter(({ op }) => op !== drops);
  if (parts.some(({ op }) => op === decides)) return decided;
  const [only] = parts;
  if (only === undefined) return empty;
  return parts.length === 1 ? only : join(...parts);
}
