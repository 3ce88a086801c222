import { type Expression, leavesOf, statementsIn } from "@good-grounds/core";
import type { Topic } from "../topic.ts";

/** Names of all facts and contested points that the rules of a topic speak of, through the states they rest on. */
export function spokenOf(
  topic: Pick<Topic, "paths" | "departures" | "dangers" | "contradictions" | "client" | "states">,
) {
  const names = new Set<string>();
  const states = new Set<string>();
  const go = (rule: Expression): void => {
    for (const leaf of leavesOf(rule))
      if ("fact" in leaf) names.add(leaf.fact);
      else if (leaf.op === "held") names.add(leaf.point);
      else if (leaf.op === "state" && !states.has(leaf.state)) {
        states.add(leaf.state);
        for (const { when } of Object.values(topic.states?.[leaf.state]?.values ?? {}))
          if (when !== undefined) go(when);
      }
  };
  for (const { exists, layers } of topic.paths) {
    go(exists);
    for (const { gone, sound } of layers) {
      go(gone);
      go(sound);
    }
  }
  const said = Object.values(topic.client).flatMap((one) => [...statementsIn(one)]);
  for (const { when } of [...topic.departures, ...(topic.dangers ?? []), ...(topic.contradictions ?? []), ...said])
    go(when);
  return names;
}
