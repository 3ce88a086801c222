import { ALWAYS, all, any, type Expression, is, NEVER, not } from "@good-grounds/core";

/** A rule where some facts are known to have one of a few values: what is settled by that is taken out. */
export function restricted(rule: Expression, given: ReadonlyMap<string, readonly string[]>): Expression {
  switch (rule.op) {
    case "is": {
      const values = given.get(rule.fact);
      if (values === undefined) return rule;
      const left = rule.values.filter((value) => values.includes(value));
      if (left.length === 0) return NEVER;
      return left.length === values.length ? ALWAYS : is(rule.fact, ...left);
    }
    case "not": {
      const of = restricted(rule.of, given);
      return of.op === "always" ? NEVER : of.op === "never" ? ALWAYS : not(of);
    }
    case "all":
      return joined(rule.of, given, "never", "always", NEVER, ALWAYS, all);
    case "any":
      return joined(rule.of, given, "always", "never", ALWAYS, NEVER, any);
    default:
      return rule;
  }
}

function joined(
  of: readonly Expression[],
  given: ReadonlyMap<string, readonly string[]>,
  decides: Expression["op"],
  drops: Expression["op"],
  decided: Expression,
  empty: Expression,
  join: (...of: readonly Expression[]) => Expression,
): Expression {
  const parts = of.map((one) => restricted(one, given)).filter(({ op }) => op !== drops);
  if (parts.some(({ op }) => op === decides)) return decided;
  const [only] = parts;
  if (only === undefined) return empty;
  return parts.length === 1 ? only : join(...parts);
}
