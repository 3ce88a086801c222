import { type Expression, leavesOf, type State, statementsIn } from "@good-grounds/core";
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
    for (const leaf of leavesOf(rule)) {
      const name = nameIn(leaf);
      if (name === undefined || spokenOf.has(name)) continue;
      spokenOf.add(name);
      if (leaf.op !== "state") continue;
      for (const { when } of Object.values(states[name]?.values ?? {})) if (when !== undefined) look(when);
    }
  };
  for (const rule of rulesOf(ruled)) look(rule);
  return (name) => !scope.isShared(name) || uses.has(name) || spokenOf.has(name);
}

function nameIn(leaf: Expression): string | undefined {
  if ("fact" in leaf) return leaf.fact;
  if (leaf.op === "held") return leaf.point;
  return leaf.op === "state" ? leaf.state : undefined;
}

function rulesOf({ paths, departures, dangers = [], contradictions = [], client }: Ruled): readonly Expression[] {
  const statements = Object.values(client).flatMap(statementsIn);
  return [
    ...paths.flatMap(({ exists, layers }) => [exists, ...layers.flatMap(({ gone, sound }) => [gone, sound])]),
    ...[...departures, ...dangers, ...contradictions].map(({ when }) => when),
    ...statements.map(({ when }) => when),
  ];
}
