import { type Evidence, isKnown, type Reckoner, TERM } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { isAtOrigin } from "../fed-from.ts";
import type { FaultRange } from "./energy-marks.ts";

/** The prospective earth fault currents of a circuit. With a parallel path the far reading can be the lower one. */
export function faultRange(far: Evidence<"ampere">, near: Evidence<"ampere">, reckon: Reckoner): FaultRange {
  if (!isKnown(far) || !isKnown(near) || far.high <= near.low) return { least: far, most: near };
  return {
    least: reckon.smallest(TERM.earthFaultCurrent, far, near),
    most: reckon.largest(TERM.earthFaultCurrent, far, near),
  };
}

/** The loop at the board of a circuit; at a board beside the origin that of the origin, where it alone was read. */
export function loopAtBoard({ board }: Circuit, { supply }: Installation): Evidence<"ohm"> {
  return !isKnown(board.zdb) && isAtOrigin(board) && isKnown(supply.ze) ? supply.ze : board.zdb;
}
