import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { breakerType } from "./breaker-types.ts";
import { deviceWords, type MarkedDevice } from "./device.ts";
import { FUSES } from "./fuses/index.ts";

/** Ratings printed in Table 41.3, A. */
export const PRINTED_BREAKER_RATINGS = [3, 6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125] as const;

/**
 * The limiting loop impedance as printed, rounded to two decimals half up, for comparison with the exact quotient. The
 * rounding puts some entries a few milliohms above the quotient; margins are never taken from them.
 */
export function tabulatedPermittedZs(device: MarkedDevice, seconds: number): Published<"ohm"> | NotKnown<"ohm"> {
  const words = `${deviceWords(device)}, ${seconds} s`;
  const breaker = breakerType(device.standard, device.type);
  if (breaker !== undefined) {
    const printed = (PRINTED_BREAKER_RATINGS as readonly number[]).includes(device.rated);
    if (!printed || (seconds !== 0.4 && seconds !== 5)) return notTabulated(TERM.permittedZs, "Table 41.3", words);
    const slow = seconds === 5 ? breaker.within5s : undefined;
    const quotient = 218.5 / ((slow?.multiple ?? breaker.most) * device.rated);
    return published(TERM.permittedZs, Math.round(quotient * 100 + 1e-9) / 100, slow?.source ?? breaker.source, words);
  }
  const row = FUSES.get(device.standard)?.find((one) => one.rated === device.rated && one.seconds === seconds);
  if (row === undefined) return notTabulated(TERM.permittedZs, "the printed tables", words);
  return published(TERM.permittedZs, row.printedZs, row.source, words);
}
