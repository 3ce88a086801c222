import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { readOff } from "./read-off.ts";

const RECALLED = source("BS 7671 Table 52.2", "2008 to 2018+A4", "memory", {
  doubt: "an older teaching page has 0.89, 0.81, 0.68, 0.55: the table before",
});
const SEEN = source("BS 7671 523.9", "2008 to 2018+A4", "published");
const FREE_SOURCE = source("BS 7671 523.9", "2008 to 2018+A4", "derived", { formula: "1 where nothing surrounds it" });

/** Rating factor by length in mm wholly surrounded by thermal insulation; the last holds for every longer one. */
export const THERMAL_INSULATION = Object.freeze([
  { length: 50, factor: 0.88, source: RECALLED },
  { length: 100, factor: 0.78, source: RECALLED },
  { length: 200, factor: 0.63, source: RECALLED },
  { length: 400, factor: 0.51, source: RECALLED },
  { length: 500, factor: 0.5, source: SEEN },
]);

const STEPS = THERMAL_INSULATION.map(({ length, factor, source: from }) => ({
  length,
  exact: published(TERM.insulationFactor, factor, from, `${length} mm`),
  between: published(TERM.insulationFactor, factor, readOff(from, "the next longer length"), `${length} mm`),
}));

const FREE = published(TERM.insulationFactor, 1, FREE_SOURCE, "not surrounded");
const LONGER = published(TERM.insulationFactor, 0.5, SEEN, "more than 500 mm");

/**
 * Rating factor Ci for a length in mm surrounded by insulation. Between the steps the longer one is taken and marked as
 * derived.
 */
export function thermalInsulationFactor(millimetres: number): Published<"ratio"> | NotKnown<"ratio"> {
  if (!(millimetres >= 0)) return notTabulated(TERM.insulationFactor, "Table 52.2", `${millimetres} mm`);
  if (millimetres === 0) return FREE;
  for (const step of STEPS) {
    if (millimetres === step.length) return step.exact;
    if (millimetres < step.length) return step.between;
  }
  return LONGER;
}
