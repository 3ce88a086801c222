import { ALWAYS, type Expression, NEVER, type State } from "@good-grounds/core";
import type { State as StateNode } from "../document/document.ts";
import { expressionOf } from "./expression.ts";
import { restricted, type Settled } from "./restrict.ts";
import type { Scope } from "./scope.ts";

/** States as far as the subject itself does not settle them, and what it settles. */
export interface StatesOfTopic {
  readonly states: Readonly<Record<string, State>>;
  readonly settled: Settled;
}

/**
 * Works out every state in scope under what the subject says. A state of which one value is left is settled, and so is
 * what rests on it: a bare bar needs no question about what wears on insulation.
 */
export function statesUnder(scope: Scope, facts: Settled["facts"]): StatesOfTopic {
  const nodes = new Map(scope.all().flatMap((one) => (one.kind === "state" ? [[one.name.text, one] as const] : [])));
  const states: Record<string, State> = {};
  const possible = new Map<string, readonly string[]>();
  const settled = { facts, states: possible };
  const underway = new Set<string>();

  const work = (node: StateNode): void => {
    const name = node.name.text;
    if (possible.has(name) || underway.has(name)) return;
    underway.add(name);
    const within = [`state ${name}`];
    const rules = node.values.map(({ when }) =>
      when === undefined ? ALWAYS : restricted(resting(expressionOf(when, scope, within)), settled),
    );
    const reached = rules.findLastIndex(({ op }) => op === "always");
    const left = node.values.filter((_, i) => i >= reached && rules[i]?.op !== "never");
    possible.set(
      name,
      left.map((value) => value.name.text),
    );
    const says = node.values.map((value, i) => {
      const when = i < reached ? NEVER : (rules[i] ?? NEVER);
      return [value.name.text, { words: value.clause, ...(i === 0 ? {} : { when }) }] as const;
    });
    states[name] = { of: node.thing, words: node.words, values: Object.fromEntries(says) };
  };
  /** A rule whose states are worked out before it. */
  const resting = (rule: Expression): Expression => {
    for (const name of statesIn(rule)) {
      const node = nodes.get(name);
      if (node !== undefined) work(node);
    }
    return rule;
  };
  for (const node of nodes.values()) work(node);
  const inOrder = [...nodes.keys()].flatMap((name) => {
    const state = states[name];
    return state === undefined ? [] : [[name, state] as const];
  });
  return { states: Object.fromEntries(inOrder), settled };
}

function statesIn(rule: Expression): readonly string[] {
  if (rule.op === "state") return [rule.state];
  if (rule.op === "not") return statesIn(rule.of);
  return rule.op === "all" || rule.op === "any" ? rule.of.flatMap(statesIn) : [];
}
