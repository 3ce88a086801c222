import {
  ALWAYS,
  all,
  any,
  atLeast,
  atMost,
  below,
  type Expression,
  held,
  is,
  moreThan,
  NEVER,
  not,
  stateIs,
} from "@good-grounds/core";
import type { Comparison, Condition, Word } from "../document/condition.ts";
import type { Fact, Point, State } from "../document/document.ts";
import { nearTo } from "../text/near.ts";
import { checkLimit } from "./quantity.ts";
import type { Scope } from "./scope.ts";

const COMPARED: Readonly<Record<Comparison, (fact: string, limit: string) => Expression>> = {
  "at least": atLeast,
  "more than": moreThan,
  "less than": below,
  "at most": atMost,
};

/** A condition as a rule for the reasoner. What it speaks of and is not there is told; such a part counts as never. */
export function expressionOf(condition: Condition, scope: Scope, within: readonly string[]): Expression {
  switch (condition.kind) {
    case "always":
      return ALWAYS;
    case "all":
      return all(...condition.of.map((one) => expressionOf(one, scope, within)));
    case "any":
      return any(...condition.of.map((one) => expressionOf(one, scope, within)));
    case "none":
      return not(any(...condition.of.map((one) => expressionOf(one, scope, within))));
    case "not-all":
      return not(all(...condition.of.map((one) => expressionOf(one, scope, within))));
    case "so":
      return so(condition.name, condition.not, scope, within);
    case "compare":
      return compared(condition, scope, within);
    case "is":
      return isOneOf(condition, scope, within);
  }
}

function so(name: Word, denied: boolean, scope: Scope, within: readonly string[]): Expression {
  const found = scope.find(name, within);
  if (found === undefined) return NEVER;
  if (found.kind === "fact" && isYesNo(found)) return is(name.text, denied ? "no" : "yes");
  const values =
    found.kind === "fact" || found.kind === "state" ? found.values : found.kind === "contested" ? found.positions : [];
  scope.fault(
    name,
    `"${name.text}" alone`,
    values.length > 0
      ? `"${name.text} is" and one of ${values.map((one) => one.name.text).join(", ")}`
      : `"${name.text}", "at least" or "less than", and a quantity`,
    "only what is answered by yes or no stands alone",
    within,
  );
  return NEVER;
}

function compared(
  { name, how, quantity }: Condition & { kind: "compare" },
  scope: Scope,
  within: readonly string[],
): Expression {
  const found = scope.find(name, within);
  if (found === undefined) return NEVER;
  if (found.kind === "amount") {
    checkLimit(quantity, found, scope, within);
    return COMPARED[how](name.text, quantity.text);
  }
  scope.fault(name, `"${name.text}" compared with a quantity`, "an amount", "only amounts are compared", within);
  return NEVER;
}

function isOneOf(condition: Condition & { kind: "is" }, scope: Scope, within: readonly string[]): Expression {
  const found = scope.find(condition.name, within);
  if (found === undefined) return NEVER;
  if (found.kind === "amount") {
    scope.fault(
      condition.name,
      `"${condition.name.text} is"`,
      '"at least", "more than", "less than" or "at most" and a quantity',
      "an amount has no values to choose from",
      within,
    );
    return NEVER;
  }
  const wanted = valuesOf(condition, found, scope, within);
  const rule = holding(condition.name.text, found, wanted);
  return condition.not ? not(rule) : rule;
}

function holding(name: string, found: Fact | Point | State, wanted: readonly string[]): Expression {
  if (found.kind === "fact") return is(name, ...wanted);
  if (found.kind === "state") return stateIs(name, ...wanted);
  const rules = wanted.map((value) => held(name, value));
  const [only] = rules;
  return rules.length === 1 && only !== undefined ? only : any(...rules);
}

/** The values meant, with what is worse or better than them where that is said. */
function valuesOf(
  { values, reach, name }: Condition & { kind: "is" },
  found: Fact | Point | State,
  scope: Scope,
  within: readonly string[],
): readonly string[] {
  const there = (found.kind === "contested" ? found.positions : found.values).map((one) => one.name.text);
  const known = values.filter((value) => {
    if (there.includes(value.text)) return true;
    const [near] = nearTo(value.text, there);
    const isName = scope.get(value.text) !== undefined;
    scope.fault(
      value,
      `"${value.text}" is no value of "${name.text}"`,
      `one of ${there.join(", ")}`,
      near !== undefined
        ? `is it "${near}"?`
        : isName
          ? 'put each condition on a line of its own below "any of"'
          : "write one of these",
      within,
    );
    return false;
  });
  if (reach === undefined) return known.map(({ text }) => text);
  if (found.kind === "contested" || (found.kind === "fact" && found.inNoOrder))
    scope.fault(name, `"or ${reach}" of "${name.text}"`, "values one by one", "its values stand in no order", within);
  const at = known.map(({ text }) => there.indexOf(text));
  return reach === "worse" ? there.slice(Math.min(...at)) : there.slice(0, Math.max(...at) + 1);
}

export function isYesNo({ values }: Fact): boolean {
  return (
    values.length === 2 &&
    values.some(({ name }) => name.text === "yes") &&
    values.some(({ name }) => name.text === "no")
  );
}
