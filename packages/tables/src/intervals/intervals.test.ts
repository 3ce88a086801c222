import { NATIONS, TENURES } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import {
  INSTRUMENTS,
  INTERVAL_PREMISES,
  INTERVAL_SOURCE,
  type IntervalPremises,
  instrumentsFor,
  RECOMMENDED_INTERVALS,
  recommendedInterval,
} from "./index.ts";

/** The handbook's table as copied out: years, "*" or change of occupancy, months between routine checks. */
const COPIED: Readonly<Record<IntervalPremises, string>> = {
  "owner-occupied dwelling": "10* -",
  "rented house or flat": "5* 12",
  "house in multiple occupation, halls, nurses accommodation": "5* 12",
  commercial: "5* 12",
  education: "5 6",
  industrial: "3 12",
  "offices, shops, laboratories": "5 12",
  "hospital general areas": "5 12",
  "medical locations": "1 6",
  cinemas: "1-3 12",
  "theatres, leisure, places of public entertainment": "3 12",
  "churches, restaurants, hotels, public houses, village halls": "5 12",
  "agricultural and horticultural": "3 12",
  caravan: "3 12",
  "caravan park, marina, fish farm, swimming pool": "1 4-6",
  "highway power supplies": "6 -",
  "launderette, petrol filling station": "1 -",
  "construction site": "0.25 -",
};

const range = ([from, to]: readonly [number, number]) => (from === to ? String(from) : `${from}-${to}`);

describe("recommended intervals", () => {
  test.each(INTERVAL_PREMISES)("%s: as copied", (premises) => {
    const row = recommendedInterval(premises);
    if (row === undefined) throw new Error(`no row for ${premises}`);
    const years = `${range(row.years)}${row.orChangeOfOccupancy ? "*" : ""}`;
    expect(`${years} ${row.routineMonths === null ? "-" : range(row.routineMonths)}`).toBe(COPIED[premises]);
  });

  test("run from short to long, once for each kind of premises, with their doubt", () => {
    for (const { years } of RECOMMENDED_INTERVALS) expect(years[0]).toBeLessThanOrEqual(years[1]);
    expect(RECOMMENDED_INTERVALS.map(({ premises }) => premises)).toEqual([...INTERVAL_PREMISES]);
    expect(INTERVAL_SOURCE.doubt).toContain("launderettes");
  });
});

describe("law", () => {
  /** Years, days to the occupier, to the remedy and to the authority, and years the record is kept. */
  const days = (nation: (typeof NATIONS)[number], tenure: (typeof TENURES)[number]) =>
    instrumentsFor(nation, tenure).map((one) => [
      one.years,
      one.copyToOccupierDays,
      one.remedyDays,
      one.copyToAuthorityDays,
      one.recordYears,
    ]);

  test("rented homes: five years everywhere; days by nation", () => {
    expect(days("england", "private-rented")).toEqual([[5, 28, 28, 7, null]]);
    expect(days("england", "social-rented")).toEqual([[5, 28, 28, 7, null]]);
    expect(days("wales", "private-rented")).toEqual([[5, 14, null, null, null]]);
    expect(days("scotland", "private-rented")).toEqual([[5, null, null, null, 6]]);
    expect(days("northern-ireland", "private-rented")).toEqual([[5, 28, 28, 7, null]]);
    expect(days("northern-ireland", "social-rented")).toEqual([]);
  });

  test("workplaces in Great Britain: a duty without a fixed interval; owners' homes: no instrument", () => {
    for (const nation of ["england", "wales", "scotland"] as const)
      expect(days(nation, "commercial-lease")).toEqual([[null, null, null, null, null]]);
    for (const nation of NATIONS) expect(days(nation, "owner-occupied")).toEqual([]);
  });

  test("dates from which they hold", () => {
    const dates = (nation: (typeof NATIONS)[number], tenure: (typeof TENURES)[number]) =>
      instrumentsFor(nation, tenure).flatMap(({ inForce }) => inForce.map(({ from }) => from));
    expect(dates("england", "private-rented")).toEqual(["2020-07-01", "2021-04-01"]);
    expect(dates("england", "social-rented")).toEqual(["2025-11-01", "2025-12-01", "2026-05-01"]);
    expect(dates("scotland", "private-rented")).toEqual(["2015-12-01", "2016-12-01"]);
    expect(dates("northern-ireland", "private-rented")).toEqual(["2025-04-01", "2025-12-01"]);
    const first = INSTRUMENTS.flatMap(({ inForce }) => inForce.flatMap(({ firstBy }) => firstBy ?? []));
    expect(first).toEqual(["2026-11-01"]);
  });

  test("every instrument names nations and tenures that exist, and doubts are said", () => {
    for (const { nations, tenures, source } of INSTRUMENTS) {
      for (const nation of nations) expect(NATIONS).toContain(nation);
      for (const tenure of tenures) expect(TENURES).toContain(tenure);
      expect(source.basis).toBe("published");
    }
    expect(instrumentsFor("wales", "private-rented")[0]?.source.doubt).toContain("14 as amended");
    expect(instrumentsFor("england", "private-rented")[0]?.source.doubt).toContain("number");
  });
});
