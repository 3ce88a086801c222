import { type Expression, type State, statementsIn } from "@good-grounds/core";
import type { Topic } from "../topic.ts";
import type { Scope } from "./scope.ts";

/** Whether a fact or contested point is a question of the topic. */
export type Asked = (name: string) => boolean;

type Ruled = Pick<Topic, "paths" | "departures" | "dangers" | "contradictions" | "client">;

/**
 * What a state brings is asked only where some rule still rests on it once what the subject itself says is taken out. The
 * topic's own facts, and those that it names itself, stay, so that one that never matters is found.
 */
export function askedIn(
  uses: ReadonlySet<string>,
  scope: Scope,
  states: Readonly<Record<string, State>>,
  ruled: Ruled,
): Asked {
  const spokenOf = new Set<string>();
  const look = (rule: Expression): void => {
    if (rule.op === "all" || rule.op === "any") return rule.of.forEach(look);
    if (rule.op === "not") return look(rule.of);
    const name =
      "fact" in rule ? rule.fact : rule.op === "held" ? rule.point : rule.op === "state" ? rule.state : undefined;
    if (name === undefined || spokenOf.has(name)) return;
    spokenOf.add(name);
    if (rule.op !== "state") return;
    for (const { when } of Object.values(states[name]?.values ?? {})) if (when !== undefined) look(when);
  };
  for (const rule of rulesOf(ruled)) look(rule);
  return (name) => !scope.isShared(name) || uses.has(name) || spokenOf.has(name);
}

function rulesOf({ paths, departures, dangers = [], contradictions = [], client }: Ruled): readonly Expression[] {
  const statements = Object.values(client).flatMap(statementsIn);
  return [
    ...paths.flatMap(({ exists, layers }) => [exists, ...layers.flatMap(({ gone, sound }) => [gone, sound])]),
    ...[...departures, ...dangers, ...contradictions].map(({ when }) => when),
    ...statements.map(({ when }) => when),
  ];
}
