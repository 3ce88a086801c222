import { DEVICE_STANDARDS, isKnown } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  BREAKER_TYPES,
  breakerType,
  breakingCapacityOf,
  energyLimitCeiling,
  FUSES,
  fallsUnderTable411,
  operatingCurrent,
  PRINTED_BREAKER_RATINGS,
  permittedDisconnectionTime,
  tabulatedPermittedZs,
  timeCurrentCurve,
} from "./index.ts";

const ia = (
  standard: (typeof DEVICE_STANDARDS)[number],
  type: "B" | "C" | "D" | "1" | "2" | "3" | "4" | null,
  rated: number,
  seconds: number,
) => operatingCurrent({ standard, type, rated }, seconds).value;

describe("circuit-breakers", () => {
  /** Table 41.3 of BS 7671:2008, before Cmin, as reproduced in a handbook appendix. */
  const TABLE_2008: Readonly<Record<"B" | "C" | "D", Readonly<Record<number, number>>>> = {
    B: { 3: 15.33, 6: 7.67, 10: 4.6, 16: 2.87, 20: 2.3, 25: 1.84, 32: 1.44, 40: 1.15, 50: 0.92, 63: 0.73, 100: 0.46 },
    C: { 6: 3.83, 10: 2.3, 16: 1.44, 20: 1.15, 25: 0.92, 32: 0.72, 40: 0.57, 50: 0.46, 63: 0.36 },
    D: { 6: 1.92, 10: 1.15, 16: 0.72, 20: 0.57, 25: 0.46, 32: 0.36, 40: 0.29, 50: 0.23, 63: 0.18 },
  };

  test.each(["B", "C", "D"] as const)(
    "type %s: printed limits are 0.95 of the 2008 table within its rounding",
    (type) => {
      for (const [rated, old] of Object.entries(TABLE_2008[type])) {
        const printed = tabulatedPermittedZs({ standard: "BS EN 60898", type, rated: Number(rated) }, 0.4);
        expect(Math.abs(printed.value - 0.95 * old)).toBeLessThanOrEqual(0.011);
      }
    },
  );

  test("printed limits are the exact quotient rounded to two decimals, never more than 5 mΩ from it", () => {
    for (const type of ["B", "C", "D"] as const) {
      for (const rated of PRINTED_BREAKER_RATINGS) {
        const printed = tabulatedPermittedZs({ standard: "BS EN 61009", type, rated }, 0.4);
        expect(Math.abs(printed.value - 218.5 / ia("BS EN 61009", type, rated, 0.4))).toBeLessThanOrEqual(0.005 + 1e-9);
      }
    }
  });

  test.each([
    ["B", 32, 160],
    ["C", 20, 200],
    ["D", 16, 320],
    ["B", 45, 225],
  ] as const)("type %s, %i A operates at once by %i A", (type, rated, amperes) => {
    expect(ia("BS EN 60898", type, rated, 0.4)).toBe(amperes);
    expect(ia("BS EN 61009", type, rated, 0.2)).toBe(amperes);
  });

  test("type D at 5 s rests on memory and says so", () => {
    const found = operatingCurrent({ standard: "BS EN 60898", type: "D", rated: 20 }, 5);
    expect(found).toMatchObject({ value: 200, detail: { source: { basis: "memory" } } });
  });

  test.each([
    ["1", 4],
    ["2", 7],
    ["3", 10],
    ["4", 50],
  ] as const)("BS 3871 type %s trips at once by %i times its rating", (type, multiple) => {
    expect(ia("BS 3871", type, 30, 0.4)).toBe(30 * multiple);
  });

  test("every type stands once, and its trip band is in order", () => {
    const marks = BREAKER_TYPES.flatMap(({ standards, type }) => standards.map((standard) => `${standard} ${type}`));
    expect(new Set(marks).size).toBe(marks.length);
    for (const { least, most } of BREAKER_TYPES) expect(least).toBeLessThan(most);
    expect(breakerType("BS EN 60898", "1")).toBeUndefined();
  });

  test("devices without a standard characteristic have no figure", () => {
    for (const device of [
      { standard: "BS EN 60947-2", type: null, rated: 100 },
      { standard: "BS EN 60898", type: null, rated: 32 },
      { standard: "BS EN 60898", type: "B", rated: 400 },
    ] as const) {
      expect(isKnown(operatingCurrent(device, 0.4))).toBe(false);
    }
  });
});

describe("fuses", () => {
  /** Printed limits of today's Tables 41.2 and 41.4 at 230 V, Ω; some from memory, marked so in the rows. */
  const PRINTED: readonly (readonly [(typeof DEVICE_STANDARDS)[number], number, number, number])[] = [
    ["BS 88-2", 0.4, 6, 7.8],
    ["BS 88-2", 0.4, 20, 1.68],
    ["BS 88-2", 0.4, 32, 0.99],
    ["BS 88-2", 5, 100, 0.42],
    ["BS 88-3", 0.4, 32, 0.91],
    ["BS 3036", 0.4, 5, 9.1],
    ["BS 3036", 0.4, 30, 1.04],
    ["BS 3036", 5, 30, 2.51],
    ["BS 1362", 0.4, 13, 2.3],
    ["BS 1361", 0.4, 30, 1.09],
    ["BS 88-6", 0.4, 20, 1.68],
  ];

  test.each(PRINTED)("%s at %d s, %i A: %d Ω", (standard, seconds, rated, ohms) => {
    expect(tabulatedPermittedZs({ standard, type: null, rated }, seconds).value).toBe(ohms);
    expect(Math.abs(218.5 / ia(standard, null, rated, seconds) - ohms)).toBeLessThanOrEqual(0.0055);
  });

  test("every row has a current and a printed limit that belong together, and stands once", () => {
    for (const [standard, rows] of FUSES) {
      const keys = rows.map(({ rated, seconds }) => `${rated} ${seconds}`);
      expect(new Set(keys).size, standard).toBe(keys.length);
      for (const { operating, printedZs, printedZs230 } of rows) {
        if (operating !== null) expect(Math.abs(218.5 / operating / printedZs - 1)).toBeLessThan(0.012);
        if (printedZs230 !== undefined) expect(Math.abs((0.95 * printedZs230) / printedZs - 1)).toBeLessThan(0.012);
      }
    }
  });

  test("a longer time never needs more current, a higher rating never less", () => {
    for (const [standard, rows] of FUSES) {
      for (const a of rows) {
        for (const b of rows) {
          if (a.rated === b.rated && a.seconds < b.seconds)
            expect(ia(standard, null, b.rated, b.seconds)).toBeLessThan(ia(standard, null, a.rated, a.seconds));
          if (a.seconds === b.seconds && a.rated < b.rated)
            expect(ia(standard, null, b.rated, b.seconds)).toBeGreaterThan(ia(standard, null, a.rated, a.seconds));
        }
      }
    }
  });

  test("between its points a fuse is taken at the shorter time; below the first there is nothing", () => {
    expect(ia("BS 3036", null, 30, 1)).toBe(ia("BS 3036", null, 30, 0.4));
    expect(operatingCurrent({ standard: "BS 3036", type: null, rated: 30 }, 1)).toMatchObject({
      detail: { source: { basis: "derived" } },
    });
    expect(isKnown(operatingCurrent({ standard: "BS 3036", type: null, rated: 30 }, 0.2))).toBe(false);
    expect(isKnown(operatingCurrent({ standard: "BS 3036", type: null, rated: 31 }, 0.4))).toBe(false);
  });
});

describe("look-ups", () => {
  test("never throw and give either a figure with source and basis or a reason", () => {
    const number = fc.oneof(fc.double(), fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 32));
    fc.assert(
      fc.property(
        fc.constantFrom(...DEVICE_STANDARDS),
        fc.constantFrom("B", "1", "gG", null),
        number,
        number,
        (standard, type, rated, seconds) => {
          const found = operatingCurrent({ standard, type, rated }, seconds);
          if (isKnown(found)) {
            expect(found.value).toBeGreaterThan(0);
            if (found.kind === "published")
              expect(found.detail.source.work.length * found.detail.source.edition.length).toBeGreaterThan(0);
          } else expect(found).toMatchObject({ detail: { silence: "not-tabulated" } });
        },
      ),
    );
  });

  test("the same device gives the same leaf, made once", () => {
    const device = { standard: "BS EN 60898", type: "B", rated: 32 } as const;
    expect(operatingCurrent(device, 0.4)).toBe(operatingCurrent({ ...device }, 0.4));
  });
});

describe("permitted disconnection time", () => {
  test.each([
    ["TN-S", 110, "final-41.1", 0.8],
    ["TN-C-S", 230, "final-41.1", 0.4],
    ["TN-S", 400, "final-41.1", 0.2],
    ["TN-S", 500, "final-41.1", 0.1],
    ["TT", 110, "final-41.1", 0.3],
    ["TT", 230, "final-41.1", 0.2],
    ["TT", 400, "final-41.1", 0.07],
    ["TT", 500, "final-41.1", 0.04],
    ["TN-S", 230, "other", 5],
    ["TT", 230, "other", 1],
  ] as const)("%s at %i V, %s: %d s", (system, volts, circuit, seconds) => {
    expect(permittedDisconnectionTime(system, volts, circuit).value).toBe(seconds);
  });

  test("IT systems and very low voltages have no row", () => {
    expect(isKnown(permittedDisconnectionTime("IT", 230, "other"))).toBe(false);
    expect(isKnown(permittedDisconnectionTime("TN-S", 50, "final-41.1"))).toBe(false);
    expect(isKnown(permittedDisconnectionTime("TN-S", Number.NaN, "other"))).toBe(false);
  });

  test("the scope of Table 41.1 ends at 63 A with socket-outlets and 32 A without", () => {
    const scope = (ratedCurrent: number, socketOutlets: boolean) =>
      fallsUnderTable411("2018+A4", { ratedCurrent, socketOutlets });
    expect([scope(32, false), scope(40, false), scope(40, true), scope(63, true), scope(80, true)]).toEqual([
      true,
      false,
      true,
      true,
      false,
    ]);
  });
});

describe("breaking capacity, energy and curves", () => {
  test.each([
    ["BS 3036", "S1A", 1000],
    ["BS 3036", "S4A", 4000],
    ["BS 1361", "I", 16500],
    ["BS 1361", "II", 33000],
    ["BS 3871", "M6", 6000],
  ] as const)("%s marked %s: %i A", (standard, mark, amperes) => {
    expect(breakingCapacityOf(standard, mark).value).toBe(amperes);
  });

  test("a mark that is not known is no figure, and a usual rating says that it is from memory", () => {
    expect(isKnown(breakingCapacityOf("BS 1361"))).toBe(false);
    expect(breakingCapacityOf("BS 88-2")).toMatchObject({ value: 80000, detail: { source: { basis: "memory" } } });
  });

  test("the energy ceiling needs class, type and marked capacity, and grows with the capacity", () => {
    const of = (markedBreakingCapacity: number, energyClass: number | undefined) =>
      energyLimitCeiling({ type: "B", rated: 32, markedBreakingCapacity, energyClass });
    expect([of(3000, 3).value, of(6000, 3).value, of(10000, 3).value]).toEqual([18000, 45000, 90000]);
    expect(isKnown(of(6000, undefined))).toBe(false);
    expect(isKnown(of(6000, 1))).toBe(false);
    expect(isKnown(energyLimitCeiling({ type: "B", rated: 40, markedBreakingCapacity: 6000, energyClass: 3 }))).toBe(
      false,
    );
  });

  test("curves run from slow to fast and never make up points for unknown devices", () => {
    const curve = timeCurrentCurve({ standard: "BS EN 60898", type: "C", rated: 20 });
    expect(curve.map(({ seconds }) => seconds)).toEqual([3600, 5, 0.1]);
    expect(curve.at(-1)).toMatchObject({ low: 100, high: 200 });
    expect(timeCurrentCurve({ standard: "BS EN 60947-2", type: null, rated: 100 })).toEqual([]);
  });
});
