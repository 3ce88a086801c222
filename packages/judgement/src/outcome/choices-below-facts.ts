import type { ChoiceBelowFacts, Classification, FollowsDespite } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { ObservationReasoning } from "../reasoning/results.ts";
import { isReasonOfItsOwn } from "./written-reason.ts";

/** How much danger a classification admits. FI says that nothing is settled: less than a danger that is. */
const ADMITS: Readonly<Record<Classification, number>> = { none: 0, C3: 0, FI: 1, C2: 2, C1: 3 };

/**
 * The least danger that the facts of an observation leave, under the positions taken: C1 or C2 where every completion of
 * the open facts comes to that at least, FI where danger cannot be ruled out and cannot be settled, or where only one
 * reading of a contradiction rules it out; else null.
 */
export function followsAtLeast({ reasoning, least: stands }: ObservationReasoning): FollowsDespite | null {
  const [least] = reasoning.possible;
  if (least === "C1" || least === "C2") return least;
  if (stands === "C1" || stands === "C2") return "FI";
  return reasoning.classification === "FI" ? "FI" : null;
}

/** Every observation classified lower than its stated facts give. */
export function choicesBelowFacts(
  { observations }: Installation,
  reasoned: readonly ObservationReasoning[],
): readonly ChoiceBelowFacts[] {
  return reasoned.flatMap((one) => {
    const follows = followsAtLeast(one);
    const { chosen, observation, path } = one;
    if (follows === null || chosen === null || ADMITS[chosen] >= ADMITS[follows]) return [];
    const reason = observations.find(({ id }) => id === observation)?.choice?.reason;
    return [{ observation, path, follows, chosen, reason: isReasonOfItsOwn(reason) ? reason : null }];
  });
}
