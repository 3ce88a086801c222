import {
  type Assumed,
  assumed,
  type Evidence,
  type Measured,
  parseAccuracy,
  TERM,
  type Unit,
} from "@good-grounds/core";

/** A reading made ready for fitting: value and the standard deviations of its errors. */
export interface Reading {
  readonly evidence: Measured<Unit>;
  readonly value: number;
  /** Standard deviation of the error that is this reading's own, in its unit. */
  readonly own: number;
  /** Standard deviation of the error common to all readings of the meter on this range, as a part of the reading. */
  readonly scale: number;
  readonly meter: string;
  /** Whether the instrument's accuracy is stated; else the ceiling of its standard was taken. */
  readonly stated: boolean;
}

/** Part of the variance of an instrument's percentage that all its readings on a range share. */
const COMMON_PART = 0.5;

/** What nulling the leads usually leaves on every reading of a continuity range, Ω either way. */
const LEADS_LEFT = 0.02;

/** Standard deviation of what nulling leaves, Ω. */
export const NULL_DEVIATION = LEADS_LEFT / Math.sqrt(3);

/** Greatest operating uncertainty of BS EN 61557 over the marked range, and of RCD times, as a part of the reading. */
const CEILING = 0.3;
const TIME_CEILING = 0.1;

/** The leaf that marks a fallback accuracy. */
export const FALLBACK: Assumed<"ratio"> = assumed(
  TERM.operatingUncertainty,
  1,
  "accuracy of the instrument not stated; the greatest uncertainty its standard allows is taken",
  [1 - CEILING, 1 + CEILING],
  { work: "BS EN 61557", edition: "all parts", basis: "published" },
);

/**
 * The reading behind evidence, where it is a number an instrument showed; a display beyond the end of its range and a
 * value that nobody read off an instrument are none. Errors are taken as rectangular within the stated accuracy (GUM
 * 4.3.7); half the variance of its percentage is common to the readings of one meter and range.
 */
export function readingOf(evidence: Evidence<Unit>): Reading | undefined {
  if (evidence.kind !== "measured" || evidence.detail.bound !== "exact" || !Number.isFinite(evidence.value)) return;
  const { value, detail, term } = evidence;
  const accuracy = detail.accuracy === null ? undefined : parseAccuracy(detail.accuracy);
  const ceiling = term.unit === "second" ? TIME_CEILING : CEILING;
  const part = accuracy?.ofReading ?? ceiling;
  const common = COMMON_PART * (part * value) ** 2;
  const limit = part * Math.abs(value) + (accuracy?.digits ?? 0) * detail.resolution;
  const own = Math.max(0, limit * limit - common) / 3 + (detail.resolution * detail.resolution) / 12;
  return {
    evidence,
    value,
    own: Math.sqrt(own),
    scale: Math.sqrt(COMMON_PART / 3) * part,
    meter: detail.taken.instrument ?? "",
    stated: accuracy !== undefined,
  };
}

/** Standard deviation of the whole error of a reading held against something of another kind. */
export function wholeDeviation({ own, scale, value }: Reading): number {
  return Math.hypot(own, scale * value);
}
