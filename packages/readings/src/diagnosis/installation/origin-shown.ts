import type { ExpectedReading, MisfitReading } from "@good-grounds/core";
import { FALLBACK, type Reading } from "./fitted-reading.ts";

/** How often one of a pair of readings at the origin is out. */
export const FAULTY = 0.03;
export const LOG_SOUND = Math.log(1 - FAULTY);

/** A reading as a misfit shows it. */
export function shownReading(
  name: string,
  { evidence, value }: Reading,
  expected: Omit<ExpectedReading, "path">,
): MisfitReading {
  return {
    name,
    path: evidence.detail.path,
    unit: evidence.term.unit,
    shown: evidence.detail.text,
    measured: value,
    ...expected,
  };
}

export const about = (value: number, deviation: number) => ({
  value,
  low: Math.max(0, value - 1.96 * deviation),
  high: value + 1.96 * deviation,
});

export const fallbacks = (...readings: readonly Reading[]) =>
  readings.every(({ stated }) => stated) ? [] : [FALLBACK];

/** How Ze is read again. What is live while its earth is off is a danger. */
export const READ_ZE =
  "with the whole installation isolated, take the earthing conductor off, read Ze again, and put it back before anything is switched on";
