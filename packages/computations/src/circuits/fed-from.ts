import { type Evidence, isKnown, isKnownFact } from "@good-grounds/core";
import type { Board, Circuit, Installation } from "@good-grounds/inspection";

/** Whether a board is known to be fed from the supply itself; one of which nobody recorded whence it is fed is not. */
export function isAtOrigin({ atOrigin }: Board): boolean {
  return isKnownFact(atOrigin) && atOrigin.word;
}

/** Whether nobody recorded whence a board is fed: then nothing is known of what lies before it. */
export function isFedFromUnknown({ atOrigin }: Board): boolean {
  return !isKnownFact(atOrigin);
}

/**
 * The loop at the board beside the main earthing terminal, from which a circuit is fed in the end: as it was read there, or
 * Ze. Not known for a board that nobody recorded the feed of.
 */
export function loopAtOrigin({ board }: Circuit, { supply }: Installation): Evidence<"ohm"> {
  let first = board;
  while (first.feeder !== undefined) first = first.feeder.board;
  return isKnown(first.zdb) || !isAtOrigin(first) ? first.zdb : supply.ze;
}
