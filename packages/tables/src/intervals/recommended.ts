import { byKey } from "../by-key.ts";
import { source } from "../sources.ts";

/** Where the intervals come from; they are starting points, and an interval needs its own reason (653.4). */
export const INTERVAL_SOURCE = source(
  "handbook values of recommended intervals, seen on pages reproducing them",
  "17th and 18th edition",
  "published",
  { doubt: "launderettes are listed in older copies only" },
);

/** Premises as the handbook table names them. */
export const INTERVAL_PREMISES = [
  "owner-occupied dwelling",
  "rented house or flat",
  "house in multiple occupation, halls, nurses accommodation",
  "commercial",
  "education",
  "industrial",
  "offices, shops, laboratories",
  "hospital general areas",
  "medical locations",
  "cinemas",
  "theatres, leisure, places of public entertainment",
  "churches, restaurants, hotels, public houses, village halls",
  "agricultural and horticultural",
  "caravan",
  "caravan park, marina, fish farm, swimming pool",
  "highway power supplies",
  "launderette, petrol filling station",
  "construction site",
] as const;
export type IntervalPremises = (typeof INTERVAL_PREMISES)[number];

/** A recommended longest interval. */
export interface RecommendedInterval {
  readonly premises: IntervalPremises;
  /** Years, from and to; the same twice where the table gives one. */
  readonly years: readonly [from: number, to: number];
  /** Whether a change of occupancy ends the interval earlier. */
  readonly orChangeOfOccupancy: boolean;
  /** Months between routine checks, from and to; null where the table gives none. */
  readonly routineMonths: readonly [from: number, to: number] | null;
}

const row = (
  premises: IntervalPremises,
  years: number | readonly [number, number],
  routineMonths: number | readonly [number, number] | null,
  orChangeOfOccupancy = false,
): RecommendedInterval => {
  const range = (given: number | readonly [number, number]) =>
    typeof given === "number" ? ([given, given] as const) : given;
  return Object.freeze({
    premises,
    years: range(years),
    orChangeOfOccupancy,
    routineMonths: routineMonths === null ? null : range(routineMonths),
  });
};

/** Recommended longest intervals between inspections. */
export const RECOMMENDED_INTERVALS: readonly RecommendedInterval[] = Object.freeze([
  row("owner-occupied dwelling", 10, null, true),
  row("rented house or flat", 5, 12, true),
  row("house in multiple occupation, halls, nurses accommodation", 5, 12, true),
  row("commercial", 5, 12, true),
  row("education", 5, 6),
  row("industrial", 3, 12),
  row("offices, shops, laboratories", 5, 12),
  row("hospital general areas", 5, 12),
  row("medical locations", 1, 6),
  row("cinemas", [1, 3], 12),
  row("theatres, leisure, places of public entertainment", 3, 12),
  row("churches, restaurants, hotels, public houses, village halls", 5, 12),
  row("agricultural and horticultural", 3, 12),
  row("caravan", 3, 12),
  row("caravan park, marina, fish farm, swimming pool", 1, [4, 6]),
  row("highway power supplies", 6, null),
  row("launderette, petrol filling station", 1, null),
  row("construction site", 0.25, null),
]);

const BY_PREMISES = byKey(RECOMMENDED_INTERVALS.map((one) => [one.premises, one] as const));

/** The recommended longest interval for premises; undefined where the table does not name them. */
export function recommendedInterval(premises: IntervalPremises): RecommendedInterval | undefined {
  return BY_PREMISES.get(premises);
}
