import type { Dismissed, Finding } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { ObservationReasoning } from "../reasoning/results.ts";
import type { Answers } from "./answered-findings.ts";
import { isNearToHarm } from "./near-to-harm.ts";
import { isWrittenReason } from "./written-reason.ts";

/**
 * Checks not met and near to harm that nothing but a reason answers: the observation says that there is no danger, and no
 * reasoning of its subject comes to the same. One answered by a danger, or to be investigated, is none of them.
 */
export function dismissed(
  { observations }: Installation,
  { by }: Answers,
  reasoned: readonly ObservationReasoning[],
): readonly Dismissed[] {
  return observations.flatMap((observation, i) => {
    const { id, choice } = observation;
    if (choice === undefined || (choice.classification !== "C3" && choice.classification !== "none")) return [];
    const stands = reasoned.find((one) => one.observation === id)?.choice;
    if (stands === "same" || stands === "allowed") return [];
    const isAlone = (finding: Finding) =>
      (by.get(finding) ?? []).every(
        (other) => other.choice?.classification === "C3" || other.choice?.classification === "none",
      );
    const checks = [...by]
      .filter(([finding, answering]) => answering.includes(observation) && isFailed(finding) && isAlone(finding))
      .map(([{ check }]) => check);
    const { classification: chosen, reason } = choice;
    if (checks.length === 0 || !isWrittenReason(reason)) return [];
    return [{ observation: id, path: ["observations", i], chosen, checks: [...new Set(checks)], reason }];
  });
}

function isFailed({ check, judgement: { verdict, asRead } }: Finding): boolean {
  return isNearToHarm(check) && (verdict === "not-met" || (verdict === "too-near" && asRead === "not-met"));
}
