import { type Evidence, isKnown, type Measured, RECTANGULAR, type Unit } from "@good-grounds/core";

/** What makes two values err together. The same cause is the same string or the same object. */
export type Cause = string | object;

/**
 * A value with its errors by cause, as standard deviations: errors of one cause act in proportion and add up with their
 * signs, errors of different causes are independent. Worst-case limits are kept beside them.
 */
export interface Doubted {
  readonly value: number;
  readonly errors: ReadonlyMap<Cause, number>;
  /** How far the true value may lie below and above, every error at its limit. */
  readonly below: number;
  readonly above: number;
  /** 1 or −1 where the true value may be any amount higher or lower; NaN where nothing is known of it at all. */
  readonly open: number;
}

const NO_ERRORS: ReadonlyMap<Cause, number> = new Map();

/** A value without doubt. */
export function exactly(value: number): Doubted {
  return { value, errors: NO_ERRORS, below: 0, above: 0, open: 0 };
}

/** A value that lies within limits either way, all alike (GUM 4.3.7); `cause` tells it from others. */
export function within(value: number, either: number, cause: Cause): Doubted {
  if (!(either > 0)) return exactly(value);
  return { value, errors: new Map([[cause, either * RECTANGULAR]]), below: either, above: either, open: 0 };
}

/** One of several jobs that are looked at together: errors of different jobs have different causes. */
export interface JobCauses {
  readonly id: string;
  /** The serial number of an instrument by its name in the job; a gain goes with the instrument from job to job. */
  readonly serialOf: (instrument: string) => string | undefined;
}

/** A reading with the errors that it carries. */
export function doubtedReading(leaf: Measured<Unit>, job?: JobCauses): Doubted {
  const { value, detail } = leaf;
  const errors = new Map<Cause, number>();
  let [below, above] = [0, 0];
  for (const error of detail.errors) {
    const cause = error.cause === null ? error : job === undefined ? error.cause : causeIn(job, error.cause, leaf);
    errors.set(cause, (errors.get(cause) ?? 0) + error.standard);
    below += error.below;
    above += error.above;
  }
  return { value, errors, below, above, open: detail.bound === "above" ? 1 : detail.bound === "below" ? -1 : 0 };
}

function causeIn({ id, serialOf }: JobCauses, cause: string, { detail: { taken } }: Measured<Unit>): Cause {
  const serial = taken.instrument === undefined ? undefined : serialOf(taken.instrument);
  if (serial === undefined || !cause.startsWith("gain ")) return `${id} ${cause}`;
  return `gain of ${serial} ${cause.slice(cause.lastIndexOf(" ") + 1)}`;
}

/** Any known quantity with its doubt: a reading's errors, or its band as limits; undefined where it is not known. */
export function doubtedOf(evidence: Evidence<Unit>, job?: JobCauses): Doubted | undefined {
  if (evidence.kind === "measured") return doubtedReading(evidence, job);
  if (!isKnown(evidence)) return undefined;
  const { value, low, high } = evidence;
  if (low === high) return exactly(value);
  if (!Number.isFinite(high)) return { ...exactly(low), open: Number.isFinite(low) ? 1 : Number.NaN };
  if (!Number.isFinite(low)) return { ...exactly(high), open: -1 };
  return within((low + high) / 2, (high - low) / 2, evidence);
}

/** a·x + b·y. An open end stays open in its direction; of two that pull apart nothing is known. */
export function combined(a: number, x: Doubted, b: number, y: Doubted): Doubted {
  const errors = new Map<Cause, number>();
  for (const [cause, deviation] of x.errors) errors.set(cause, a * deviation);
  for (const [cause, deviation] of y.errors) errors.set(cause, (errors.get(cause) ?? 0) + b * deviation);
  const ends = [Math.sign(a) * x.open, Math.sign(b) * y.open].filter((end) => end !== 0);
  return {
    value: a * x.value + b * y.value,
    errors,
    below: reach(a, x, -1) + reach(b, y, -1),
    above: reach(a, x, 1) + reach(b, y, 1),
    open: ends.length === 2 && ends[0] !== ends[1] ? Number.NaN : (ends[0] ?? 0),
  };
}

/** How far a multiple of a value reaches up (1) or down (−1). */
function reach(factor: number, { below, above }: Doubted, up: 1 | -1): number {
  return Math.abs(factor) * (factor * up >= 0 ? above : below);
}

export function sumOf(...parts: readonly Doubted[]): Doubted {
  return parts.reduce((all, part) => combined(1, all, 1, part));
}

export function lessOf(x: Doubted, y: Doubted): Doubted {
  return combined(1, x, -1, y);
}

/** A multiple of a value. */
export function timesOf(factor: number, x: Doubted): Doubted {
  return combined(factor, x, 0, NOTHING);
}

/** x·y, its errors in first order. */
export function productOf(x: Doubted, y: Doubted): Doubted {
  return { ...combined(y.value, x, x.value, y), value: x.value * y.value };
}

/** x ÷ y, its errors in first order. */
export function quotientOf(x: Doubted, y: Doubted): Doubted {
  return { ...combined(1 / y.value, x, -x.value / y.value ** 2, y), value: x.value / y.value };
}

/** x·y ÷ (x + y), two resistances in parallel, its errors in first order. */
export function parallelOf(x: Doubted, y: Doubted): Doubted {
  const both = x.value + y.value;
  if (!(both > 0)) return exactly(0);
  return {
    ...combined((y.value / both) ** 2, x, (x.value / both) ** 2, y),
    value: (x.value * y.value) / both,
  };
}

/** Standard deviation of all errors together. */
export function standardOf({ errors }: Doubted): number {
  let sum = 0;
  for (const deviation of errors.values()) sum += deviation * deviation;
  return Math.sqrt(sum);
}

/** Covariance of two values by the causes that they share. */
export function covarianceOf(x: Doubted, y: Doubted): number {
  let sum = 0;
  for (const [cause, deviation] of x.errors) sum += deviation * (y.errors.get(cause) ?? 0);
  return sum;
}

/** Whether an error of one cause acts on both. */
export function sharesGain(x: Doubted, y: Doubted): boolean {
  for (const cause of x.errors.keys()) {
    if (typeof cause === "string" && cause.startsWith("gain ") && y.errors.has(cause)) return true;
  }
  return false;
}

const NOTHING = exactly(0);
