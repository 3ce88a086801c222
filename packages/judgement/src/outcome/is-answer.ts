import type { ObservationEntry as Observation } from "@good-grounds/inspection";
import { isReasonOfItsOwn, isWrittenReason } from "./written-reason.ts";

/**
 * Whether an observation can answer anything: it is classified, and says why where that leaves the outcome as it is. A
 * finding near to harm is answered so by a reason that stands by itself alone.
 */
export function isAnswer({ choice }: Observation, isNear: boolean): boolean {
  if (choice === undefined) return false;
  if (isDecisive({ choice })) return true;
  return isNear ? isReasonOfItsOwn(choice.reason) : isWrittenReason(choice.reason);
}

/** Whether its classification makes the report unsatisfactory under every edition. */
export function isDecisive({ choice }: Pick<Observation, "choice">): boolean {
  return choice?.classification === "C1" || choice?.classification === "C2";
}
