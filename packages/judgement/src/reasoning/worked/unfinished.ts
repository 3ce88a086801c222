import { missingOf } from "@good-grounds/core";
import type { Topic } from "@good-grounds/topics";
import type { UnfinishedFact, WorkedFact } from "../results.ts";
import { kebab, needsOf } from "./figures.ts";

/**
 * Facts for which a computation was begun from figures given by hand and came to no answer, with what it lacks: the
 * names of figures that are not given, and in words what no table has.
 */
export function unfinishedOf(topic: Topic, byHand: readonly WorkedFact[]): readonly UnfinishedFact[] {
  const needs = needsOf(topic);
  return byHand
    .filter(({ value }) => value === null)
    .map(({ fact, by, judgement }) => {
      const lacks = missingOf(judgement).map((leaf) => {
        const of = leaf.kind === "not-known" ? leaf.term.name : leaf.matter.name;
        const name = kebab(String(leaf.detail.path[0] ?? ""));
        const { reason } = leaf.detail;
        return needs.has(name) && reason === "" ? name : reason === "" ? of : `${of} (${reason})`;
      });
      return { fact, by, lacks: [...new Set(lacks)] };
    });
}
