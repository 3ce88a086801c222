import {
  type Assumed,
  assumed,
  type Evidence,
  type Measured,
  TERM,
  type Unit,
  USUAL_ACCURACY,
} from "@good-grounds/core";
import { type Doubted, doubtedReading, standardOf } from "@good-grounds/measurement";

/** A reading made ready for fitting. Its errors are those that every check takes, by cause. */
export interface Reading {
  readonly evidence: Measured<Unit>;
  readonly value: number;
  readonly doubted: Doubted;
  /** Standard deviation of the errors that are this reading's own, in its unit. */
  readonly own: number;
  /** Standard deviation by cause of the errors that other readings have as well, in its unit. */
  readonly shared: ReadonlyMap<string, number>;
  /** Name of the instrument. */
  readonly meter: string;
  /** Whether the instrument's accuracy is stated; else a usual one's was taken. */
  readonly stated: boolean;
}

const usualLoop = USUAL_ACCURACY.loop.ofReading;

/** The leaf that marks an accuracy that was taken and not stated. */
export const FALLBACK: Assumed<"ratio"> = assumed(
  TERM.operatingUncertainty,
  1,
  "accuracy of the instrument not stated; what usual instruments are out by is taken",
  [1 - usualLoop, 1 + usualLoop],
  USUAL_ACCURACY.loop.source,
);

/**
 * The reading behind evidence, where it is a number an instrument showed; a display beyond the end of its range and a
 * value that nobody read off an instrument are none.
 */
export function readingOf(evidence: Evidence<Unit>): Reading | undefined {
  if (evidence.kind !== "measured" || evidence.detail.bound !== "exact" || !Number.isFinite(evidence.value)) return;
  const { value, detail } = evidence;
  const doubted = doubtedReading(evidence);
  const shared = new Map<string, number>();
  let own = 0;
  for (const [cause, deviation] of doubted.errors) {
    if (typeof cause === "string") shared.set(cause, deviation);
    else own += deviation * deviation;
  }
  return {
    evidence,
    value,
    doubted,
    own: Math.sqrt(own),
    shared,
    meter: detail.taken.instrument ?? "",
    stated: detail.accuracy !== null,
  };
}

/** Standard deviation of the whole error of a reading held against something of another kind. */
export function wholeDeviation({ doubted }: Reading): number {
  return standardOf(doubted);
}
