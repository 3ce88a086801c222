import { ALWAYS, type Compiled, ruleIn, statementsIn } from "@good-grounds/core";
import { compiledTopic } from "../compiled.ts";
import type { Topic } from "../topic.ts";

/** A topic with everything that answers can change. */
export interface Functions {
  readonly compiled: Compiled;
  /** The class, what cannot be, which sentence is said and which remedy fits. */
  readonly nodes: readonly number[];
}

export function functionsOf(topic: Topic): Functions {
  const said = Object.values(topic.client).flatMap((statements) => statementsIn(statements).map(({ when }) => when));
  const fits = topic.remedies.map(({ where }) => where ?? ALWAYS);
  const compiled = compiledTopic(topic);
  const rules = [...said, ...fits].map((rule) => ruleIn(rule, compiled));
  return { compiled, nodes: [compiled.root, compiled.contradicted, ...rules] };
}

/** Whether two values of a variable come to the same in every function. */
export function areAlike({ compiled: { diagram }, nodes }: Functions, variable: number, a: number, b: number): boolean {
  return nodes.every((node) => diagram.restrict(node, variable, a) === diagram.restrict(node, variable, b));
}

/** Every two of so many. */
export function everyTwo(count: number): readonly (readonly [number, number])[] {
  return Array.from({ length: count }, (_, a) =>
    Array.from({ length: count - a - 1 }, (_, i) => [a, a + i + 1] as const),
  ).flat();
}
