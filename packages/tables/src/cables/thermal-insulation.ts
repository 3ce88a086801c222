import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const M = source("BS 7671 Table 52.2", "2008 to 2018+A4", "memory", {
  doubt: "an older teaching page has 0.89, 0.81, 0.68, 0.55",
});
const P = source("BS 7671 523.9", "2008 to 2018+A4", "published");

/** Factor by length in mm wholly surrounded by thermal insulation. */
const ROWS = [
  { upTo: 50, node: published(TERM.insulationFactor, 0.88, M, "50 mm") },
  { upTo: 100, node: published(TERM.insulationFactor, 0.78, M, "100 mm") },
  { upTo: 200, node: published(TERM.insulationFactor, 0.63, M, "200 mm") },
  { upTo: 400, node: published(TERM.insulationFactor, 0.51, M, "400 mm") },
  { upTo: Number.POSITIVE_INFINITY, node: published(TERM.insulationFactor, 0.5, P, "500 mm or more") },
] as const;

const FREE = published(TERM.insulationFactor, 1, P, "not surrounded");

/** Rating factor Ci for a length in mm surrounded by insulation; between the steps the longer one is taken. */
export function thermalInsulationFactor(millimetres: number): Published<"ratio"> | NotKnown<"ratio"> {
  if (!(millimetres >= 0)) return notTabulated(TERM.insulationFactor, "Table 52.2", `${millimetres} mm`);
  if (millimetres === 0) return FREE;
  const row = ROWS.find(({ upTo }) => millimetres <= upTo);
  return row?.node ?? notTabulated(TERM.insulationFactor, "Table 52.2", `${millimetres} mm`);
}

/** Rating factor for overload protection by a semi-enclosed fuse, 1.45 ÷ 2. */
export const semiEnclosedFactor = published(
  TERM.fuseFactor,
  0.725,
  source("BS 7671 433.1.202", "2008 to 2018+A4", "published", { formula: "1.45 ÷ 2" }),
  "BS 3036",
);
