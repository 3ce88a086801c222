import type { Quantity } from "../quantity/quantity.ts";
import type { Unit } from "../quantity/unit.ts";
import type { Written } from "../quantity/written.ts";

/** The accuracy of one range of an instrument as its maker states it: ±(part of reading + digits of the last place). */
export interface Accuracy {
  readonly text: string;
  /** Part of the reading, 0.05 for 5 %. */
  readonly ofReading: number;
  /** Counts of the last digit shown. */
  readonly digits: number;
}

const FORM = /^±?\(?(\d{1,2}(?:\.\d{1,3})?) ?% ?(?:\+ ?(\d{1,3}) digits?)?\)?$/;

/** Reads "±(5 % + 3 digits)" or "2 %". Undefined where the text has another form. */
export function parseAccuracy(text: string): Accuracy | undefined {
  const parts = text.length > 40 ? null : FORM.exec(text.trim());
  if (parts === null) return undefined;
  return Object.freeze({ text, ofReading: Number(`${parts[1]}e-2`), digits: Number(parts[2] ?? "0") });
}

/**
 * The band of a written value. A display at the end of its range (">999 MΩ") is open on that side. Quantities that
 * cannot be negative are not given a negative band, since every reading of this project but temperature is a magnitude.
 */
export function bandOf<U extends Unit>(
  written: Written<U>,
  accuracy: Accuracy | null,
): readonly [low: Quantity<U>, high: Quantity<U>] {
  const { value, resolution, bound } = written;
  const half = accuracy === null ? 0 : Math.abs(value) * accuracy.ofReading + accuracy.digits * resolution;
  const floor = value >= 0 ? 0 : Number.NEGATIVE_INFINITY;
  const low = bound === "below" ? floor : Math.max(floor, value - half);
  const high = bound === "above" ? Number.POSITIVE_INFINITY : value + half;
  return [low as Quantity<U>, high as Quantity<U>];
}
