import { isKnownFact } from "@good-grounds/core";
import type { Board } from "@good-grounds/inspection";

/** Whether a board is known to be fed from the supply itself; one of which nobody recorded whence it is fed is not. */
export function isAtOrigin({ atOrigin }: Board): boolean {
  return isKnownFact(atOrigin) && atOrigin.word;
}

/** Whether nobody recorded whence a board is fed: then nothing is known of what lies before it. */
export function isFedFromUnknown({ atOrigin }: Board): boolean {
  return !isKnownFact(atOrigin);
}
