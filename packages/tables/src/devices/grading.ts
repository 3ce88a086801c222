import { type Published, published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";
import { BREAKER_RATINGS, breakerType } from "./breaker-types.ts";
import type { MarkedDevice } from "./device.ts";

/** Ratio of rated currents from which gG fuses of one system grade, whatever the fault current; 16 A and more. */
export const fuseGradingRatio = published(
  TERM.gradingRatio,
  1.6,
  source("IEC 60269-2, discrimination of gG fuse-links", "current", "memory", {
    doubt: "not seen; for fuse-links of 16 A and more",
  }),
  "In,1 : In,2 = 1.6 : 1",
);

/** Currents in A between which a breaker begins to trip at once; undefined where its marks set none. */
export function instantTrip({
  standard,
  type,
  rated,
}: MarkedDevice): readonly [Published<"ampere">, Published<"ampere">] | undefined {
  const row = breakerType(standard, type);
  if (row === undefined || !(rated >= BREAKER_RATINGS.least && rated <= BREAKER_RATINGS.greatest)) return undefined;
  const at = (multiple: number) =>
    published(
      TERM.aheadTrip,
      multiple * rated,
      { ...row.source, basis: "derived", formula: `${multiple} × In` },
      `${standard} type ${type}`,
    );
  return [at(row.least), at(row.most)];
}
