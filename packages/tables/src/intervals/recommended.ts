import { source } from "../sources.ts";

/** Where the intervals come from; they are starting points, and an interval needs its own reason (653.4). */
export const INTERVAL_SOURCE = source(
  "handbook table of recommended intervals, two contractor copies",
  "17th and 18th edition",
  "published",
  {
    doubt: "launderettes are listed in older copies only",
  },
);

/** Recommended longest intervals between inspections in years (from, to), by premises, and between routine checks. */
export const RECOMMENDED_INTERVALS: readonly {
  readonly premises: string;
  readonly years: readonly [number, number];
  readonly orChangeOfOccupancy: boolean;
  readonly routine: string | null;
}[] = Object.freeze([
  { premises: "owner-occupied dwelling", years: [10, 10], orChangeOfOccupancy: true, routine: null },
  { premises: "rented house or flat", years: [5, 5], orChangeOfOccupancy: true, routine: "1 y" },
  {
    premises: "house in multiple occupation, halls, nurses accommodation",
    years: [5, 5],
    orChangeOfOccupancy: true,
    routine: "1 y",
  },
  { premises: "commercial", years: [5, 5], orChangeOfOccupancy: true, routine: "1 y" },
  { premises: "education", years: [5, 5], orChangeOfOccupancy: false, routine: "6 months" },
  { premises: "industrial", years: [3, 3], orChangeOfOccupancy: false, routine: "1 y" },
  { premises: "offices, shops, laboratories", years: [5, 5], orChangeOfOccupancy: false, routine: "1 y" },
  { premises: "hospital general areas", years: [5, 5], orChangeOfOccupancy: false, routine: "1 y" },
  { premises: "medical locations", years: [1, 1], orChangeOfOccupancy: false, routine: "6 months" },
  { premises: "cinemas", years: [1, 3], orChangeOfOccupancy: false, routine: "1 y" },
  {
    premises: "theatres, leisure, places of public entertainment",
    years: [3, 3],
    orChangeOfOccupancy: false,
    routine: "1 y",
  },
  {
    premises: "churches, restaurants, hotels, public houses, village halls",
    years: [5, 5],
    orChangeOfOccupancy: false,
    routine: "1 y",
  },
  { premises: "agricultural and horticultural", years: [3, 3], orChangeOfOccupancy: false, routine: "1 y" },
  { premises: "caravan", years: [3, 3], orChangeOfOccupancy: false, routine: "1 y" },
  {
    premises: "caravan park, marina, fish farm, swimming pool",
    years: [1, 1],
    orChangeOfOccupancy: false,
    routine: "4 to 6 months",
  },
  { premises: "highway power supplies", years: [6, 6], orChangeOfOccupancy: false, routine: null },
  { premises: "launderette, petrol filling station", years: [1, 1], orChangeOfOccupancy: false, routine: null },
  { premises: "construction site", years: [0.25, 0.25], orChangeOfOccupancy: false, routine: null },
]);
