import type { Accuracy } from "@good-grounds/core";
import { source } from "../sources.ts";

/** The part of a reading beyond which it no longer counts as measured, by BS EN 61557. */
const CEILING = 0.3;

export const LOWEST_USABLE_READING = source("BS EN 61557, operating uncertainty of 30 %", "current", "derived", {
  formula: "R,min = digits × resolution ÷ (0.30 − part of reading)",
  doubt: "before influences of temperature, tilt and supply; makers mark somewhat higher values for them",
});

/**
 * The reading at which ±(part of reading + digits) reaches 30 % of it, in the unit of the resolution. Smaller readings
 * lie outside what the instrument standard counts as a measurement. Undefined where no reading is good enough: a part of
 * reading of 30 % or more, or a resolution that is not positive.
 */
export function lowestUsableReading({ ofReading, digits }: Accuracy, resolution: number): number | undefined {
  if (!(ofReading >= 0 && ofReading < CEILING && digits >= 0)) return undefined;
  if (!(resolution > 0 && Number.isFinite(resolution))) return undefined;
  return (digits * resolution) / (CEILING - ofReading);
}
