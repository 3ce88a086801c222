import { type Compared, type Evidence, isKnown, type Reckoner, TERM } from "@good-grounds/core";
import {
  type Account,
  agreement,
  doubtedOf,
  lessOf,
  parallelOf,
  residualOf,
  sumOf,
  timesOf,
} from "@good-grounds/measurement";
import { QUESTION } from "../matters.ts";
import { asExpected } from "./as-expected.ts";

/** The parts that a loop at a point is held against. */
export interface LoopParts {
  readonly zs: Account<"ohm">;
  /** The loop before the circuit, as it was read. */
  readonly before: Account<"ohm">;
  /** Whether that is Ze, read with the earthing conductor off. */
  readonly isExternal: boolean;
  /** R1+R2, as warm as it may be in the live test. */
  readonly own: Account<"ohm">;
}

/**
 * Ze is read with the earthing conductor off, Zs with everything that is bonded in parallel: their sum is an upper bound,
 * and what is left at the least is the circuit's own conductors.
 */
export function withEarthsBeside({ zs, own }: LoopParts, reckon: Reckoner): Compared {
  return agreement(reckon, QUESTION.loopWithEarths, zs, own, "not-below");
}

/**
 * R1+R2 of a ring is read cross-connected: beside the board that holds r1·r2 ÷ (r1 + r2), of which the loop there has
 * nothing. So much less than the sum may Zs be, at a spur or where R1+R2 stands at a point near the board. Where round the
 * ring it was read is not told, so that it is expected; at a spur, shown by R1+R2 above a quarter of both ends, it is
 * shown. Undefined where the ends were not read, or Zs is lower still.
 */
export function nearTheBoard(
  { zs, before, own }: LoopParts,
  { r1, r2 }: { readonly r1: Evidence<"ohm">; readonly r2: Evidence<"ohm"> },
  reckon: Reckoner,
): Compared | undefined {
  const [x, y] = [doubtedOf(r1), doubtedOf(r2)];
  if (x === undefined || y === undefined || own.doubted === undefined || before.doubted === undefined) return undefined;
  const ofRing = reckon.inParallel(TERM.ringNearEnd, [r1, r2]);
  const spur = reckon.difference(TERM.circuitPart, own.shown, ofRing);
  const quarter = timesOf(0.25, sumOf(x, y));
  const isSpur = residualOf(own.doubted, quarter, "not-above").verdict !== "met";
  const sum = reckon.sum(TERM.expectedZs, before.shown, spur);
  const least = {
    shown: isSpur ? sum : asExpected(sum, "the least, Zs read nearer the board than R1+R2", reckon),
    doubted: sumOf(before.doubted, lessOf(own.doubted, parallelOf(x, y))),
  };
  const near = agreement(reckon, QUESTION.loopAtSpur, zs, least, "not-below", isSpur ? "proven" : "expected");
  return near.verdict === "met" ? near : undefined;
}

/** The loop before a circuit at a load on pipes, with its line conductor alone: what no path beside it can shorten. */
export function withLineAlone(
  before: Evidence<"ohm">,
  own: Account<"ohm">,
  lineShare: Evidence<"ratio">,
  reckon: Reckoner,
): Account<"ohm"> {
  const shown = reckon.sum(TERM.expectedZs, before, reckon.product(TERM.circuitPart, own.shown, lineShare));
  const start = doubtedOf(before);
  const line = own.doubted && isKnown(lineShare) ? timesOf(lineShare.value, own.doubted) : undefined;
  return { shown, doubted: start && line && sumOf(start, line) };
}
