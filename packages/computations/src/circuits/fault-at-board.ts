import {
  assumed,
  type Evidence,
  type Fact,
  type FaultCurrentMethod,
  fact,
  isKnown,
  isKnownFact,
  notKnown,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import type { Board, Installation } from "@good-grounds/inspection";
import { source } from "@good-grounds/tables";
import { ASKED } from "../matters.ts";
import { isAtOrigin, isFedFromUnknown } from "./fed-from.ts";

/** The prospective fault current that stands for a board, and where it was measured. */
export interface FaultAtBoard {
  readonly faultCurrent: Evidence<"ampere">;
  readonly method: Fact<FaultCurrentMethod>;
  readonly measuredHere: Fact<boolean>;
}

/** The board's own reading; without one, that of the nearest place towards the origin, which is an upper limit. */
export function faultAtBoard(board: Board, { supply }: Installation): FaultAtBoard {
  let top = board;
  for (let at: Board | undefined = board; at !== undefined; at = at.feeder?.board) {
    top = at;
    if (!isKnown(at.faultCurrent)) continue;
    const { faultCurrent, faultCurrentMethod: method } = at;
    return { faultCurrent, method, measuredHere: at === board ? HERE : NEARER };
  }
  const { faultCurrent, faultCurrentMethod: method } = supply;
  // Where nobody recorded whence a board is fed, nobody knows that the origin's fault current is its upper limit.
  if (isFedFromUnknown(top))
    return {
      faultCurrent: notKnown(TERM.measuredFaultCurrent, top.atOrigin.detail.path),
      method,
      measuredHere: NEARER,
    };
  // A board beside the origin sees the origin's fault current, less what the tails take off.
  const recorded = isKnown(faultCurrent) ? faultCurrent : board.faultCurrent;
  return { faultCurrent: recorded, method, measuredHere: isAtOrigin(board) ? HERE : NEARER };
}

const HERE = fact(ASKED.measuredHere, true, []);
const NEARER = fact(ASKED.measuredHere, false, []);

/** What a fault at the board can amount to, for a supply of one or three phases. */
export function greatestFault(
  given: FaultAtBoard & { readonly phases: Fact<"1" | "3"> },
  reckon: Reckoner,
): Evidence<"ampere"> {
  const { faultCurrent, method, measuredHere, phases } = given;
  const here =
    isKnownFact(measuredHere) && measuredHere.word
      ? faultCurrent
      : reckon.product(TERM.faultCurrent, faultCurrent, UPSTREAM);
  if (!isKnownFact(phases)) return reckon.lookedUp(TERM.faultCurrent, undefined, phases, here);
  if (phases.word === "1") return here;
  const factor = isKnownFact(method) ? THREE_PHASE[method.word] : UNKNOWN_METHOD;
  return reckon.product(TERM.threePhaseFaultCurrent, here, reckon.lookedUp(TERM.threePhaseFactor, factor, method));
}

const UPSTREAM = assumed(
  TERM.upstreamPart,
  1,
  "measured nearer to the origin; the cable between can only lower it",
  [0, 1],
);

const NETWORK = source("network theory: bolted fault, equal line and neutral impedance", "none", "derived", {
  formula: "three-phase: U0/Zline = 2·U0/Z(L-N); line to line: √3·U0/Z(L-N)",
});

const THREE_PHASE: Readonly<Record<FaultCurrentMethod, ReturnType<typeof assumed<"ratio">>>> = Object.freeze({
  "line-neutral": assumed(
    TERM.threePhaseFactor,
    2,
    "equal line and neutral impedances: twice the line to neutral value",
    [2, 2],
    NETWORK,
  ),
  "line-line": assumed(TERM.threePhaseFactor, 2 / Math.sqrt(3), "2/√3 of the line to line value", undefined, NETWORK),
  "three-phase": assumed(TERM.threePhaseFactor, 1, "recorded as the three-phase value"),
});

const UNKNOWN_METHOD = assumed(
  TERM.threePhaseFactor,
  2,
  "not recorded how it was measured: between the value itself and twice the value",
  [1, 2],
  NETWORK,
);
