import {
  type Compiled,
  type Knowledge,
  possibleOf,
  possibleSeverities,
  readAnswers,
  ruleIn,
  severitiesOf,
} from "@good-grounds/core";
import type { Remedy, Topic } from "@good-grounds/topics";
import type { RemedyEffect } from "./results.ts";

/**
 * Remedies that may fit what is known and lower what is possible, cheapest first; those that leave danger for certain come
 * after the others.
 */
export function remediesThatHelp(
  topic: Topic,
  compiled: Compiled,
  { masks }: Pick<Knowledge, "masks">,
): readonly RemedyEffect[] {
  const before = possibleSeverities(compiled, masks);
  return topic.remedies
    .filter(({ where }) => where === undefined || possibleOf(compiled, ruleIn(where, compiled), masks) !== 1)
    .flatMap((remedy) => {
      const leaves = possibleSeverities(compiled, masksAfter(remedy, compiled, masks));
      return isBetter(leaves, before) ? [{ remedy, after: severitiesOf(leaves) }] : [];
    })
    .sort((a, b) => Number(leavesDanger(a)) - Number(leavesDanger(b)));
}

function masksAfter({ changes }: Remedy, compiled: Compiled, masks: readonly number[]): readonly number[] {
  const { knowledge } = readAnswers(compiled, { facts: changes });
  const changed = new Set(Object.keys(changes).map((name) => compiled.index.get(`fact ${name}`)));
  return masks.map((mask, variable) => (changed.has(variable) ? (knowledge.masks[variable] as number) : mask));
}

/** Whether a remedy alone is not enough, whatever the open facts turn out to be. */
function leavesDanger({ after: [least] }: RemedyEffect): boolean {
  return least === "C2" || least === "C1";
}

/** Whether the worst that is possible is less, or the best is. */
function isBetter(after: number, before: number): boolean {
  return 31 - Math.clz32(after) < 31 - Math.clz32(before) || Math.clz32(after & -after) > Math.clz32(before & -before);
}
