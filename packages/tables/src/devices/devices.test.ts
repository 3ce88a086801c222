import { DEVICE_STANDARDS, isKnown } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  BREAKER_TYPES,
  breakerType,
  breakingCapacityOf,
  breakingCapacityOfLegacy,
  conventionalCurrents,
  energyLimitCeiling,
  FUSES,
  fallsUnderTable411,
  operatingCurrent,
  PRINTED_BREAKER_RATINGS,
  permittedDirectCurrentTime,
  permittedDisconnectionTime,
  reducedLowVoltageTime,
  tabulatedPermittedZs,
  timeCurrentCurve,
  typicalBreakingCapacity,
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

  test("printed limits lie at most 5 mΩ beside the exact quotient", () => {
    for (const type of ["B", "C", "D"] as const) {
      for (const rated of PRINTED_BREAKER_RATINGS[type] ?? []) {
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

  test("trip bands by type, all read", () => {
    expect(BREAKER_TYPES.map(({ type, least, most, source }) => [type, least, most, source.basis])).toEqual([
      ["B", 3, 5, "published"],
      ["C", 5, 10, "published"],
      ["D", 10, 20, "published"],
      ["1", 2.7, 4, "published"],
      ["2", 4, 7, "published"],
      ["3", 7, 10, "published"],
      ["4", 10, 50, "published"],
    ]);
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
      { standard: "BS EN 60898", type: "B", rated: 0.4 },
      { standard: "BS EN 60898", type: "1", rated: 32 },
      { standard: "BS 3871", type: "B", rated: 32 },
    ] as const) {
      expect(isKnown(operatingCurrent(device, 0.4))).toBe(false);
      expect(timeCurrentCurve(device), JSON.stringify(device)).toEqual([]);
    }
  });

  test("the multiples hold from 0.5 A to 125 A, for every rating between", () => {
    const known = (rated: number) => isKnown(operatingCurrent({ standard: "BS EN 60898", type: "B", rated }, 0.4));
    expect([0.49, 0.5, 45, 125, 126].map(known)).toEqual([false, true, true, true, false]);
    const points = (rated: number) => timeCurrentCurve({ standard: "BS EN 60898", type: "B", rated }).length;
    expect([0.49, 0.5, 45, 125, 126].map(points)).toEqual([0, 3, 3, 3, 0]);
  });

  test("the multiples hold from 0.1 s, no sooner", () => {
    const device = { standard: "BS EN 60898", type: "B", rated: 16 } as const;
    expect(operatingCurrent(device, 0.1).value).toBe(80);
    for (const seconds of [0.099, 0.04, 0, -1, Number.NaN])
      expect(isKnown(operatingCurrent(device, seconds))).toBe(false);
  });

  test("a current is derived from its multiple, and a doubt about the multiple stays with it", () => {
    expect(operatingCurrent({ standard: "BS EN 60898", type: "C", rated: 45 }, 0.4)).toMatchObject({
      value: 450,
      detail: { source: { basis: "derived", formula: "Ia = multiple × In" } },
    });
    expect(operatingCurrent({ standard: "BS 3871", type: "4", rated: 20 }, 0.4)).toMatchObject({
      value: 1000,
      detail: { source: { doubt: expect.stringContaining("maker") } },
    });
    expect(operatingCurrent({ standard: "BS EN 60898", type: "D", rated: 20 }, 4.9).value).toBe(400);
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

describe("what a fuse's marks and points carry", () => {
  test("a gM fuse has a characteristic of its own, whatever its rated current", () => {
    for (const standard of ["BS 88-2", "BS 88-2.2", "BS 88-6"] as const) {
      expect(ia(standard, null, 32, 0.4)).toBe(220);
      for (const look of [operatingCurrent, tabulatedPermittedZs])
        expect(isKnown(look({ standard, type: "gM", rated: 32 }, 0.4))).toBe(false);
      expect(operatingCurrent({ standard, type: "gG", rated: 32 }, 0.4).value).toBe(220);
    }
    expect(timeCurrentCurve({ standard: "BS 88-2", type: "gM", rated: 32 })).toEqual([]);
  });

  test("both types of BS 1361 share their points; a breaker's type on a fuse fits nothing", () => {
    for (const type of ["I", "II", null] as const)
      expect(operatingCurrent({ standard: "BS 1361", type, rated: 30 }, 0.4).value).toBe(200);
    expect(isKnown(operatingCurrent({ standard: "BS 3036", type: "B", rated: 30 }, 0.4))).toBe(false);
  });

  test("a current from a printed limit says so, from memory stays from memory, and a doubt is passed on", () => {
    expect(operatingCurrent({ standard: "BS 88-2", type: "gG", rated: 100 }, 5)).toMatchObject({
      detail: { source: { basis: "memory", formula: "Ia = 218.5 V ÷ printed Zs" } },
    });
    const doubtful = { standard: "BS 88-2", type: "gG", rated: 160 } as const;
    for (const seconds of [5, 8])
      expect(operatingCurrent(doubtful, seconds)).toMatchObject({
        detail: { source: { basis: "memory", doubt: expect.stringContaining("5.06") } },
      });
    expect(operatingCurrent({ standard: "BS 88-3", type: null, rated: 45 }, 1)).toMatchObject({
      detail: {
        source: { basis: "memory", formula: expect.stringContaining("within 0.4 s also operates within 1 s") },
      },
    });
  });
});

describe("conventional currents", () => {
  test.each([
    ["BS EN 60898", "B", 32, 36.16, 46.4, 3600],
    ["BS EN 61009", "C", 63, 71.19, 91.35, 3600],
    ["BS EN 60898", "C", 64, 72.32, 92.8, 7200],
    ["BS EN 60898", "D", 100, 113, 145, 7200],
    ["BS 88-2", "gG", 32, 40, 51.2, 3600],
    ["BS 88-2", "gG", 100, 125, 160, 7200],
    ["BS 88-2", "gG", 16, 20, 25.6, 3600],
    ["BS 88-2", "gG", 63, 78.75, 100.8, 3600],
    ["BS 88-2", "gG", 64, 80, 102.4, 7200],
    ["BS 88-6", "gG", 160, 200, 256, 7200],
    ["BS 88-6", "gG", 161, 201.25, 257.6, 10800],
    ["BS 88-2", null, 200, 250, 320, 10800],
    ["BS 88-2.2", null, 400, 500, 640, 10800],
    ["BS EN 60898", "B", 0.5, 0.565, 0.725, 3600],
    ["BS EN 61009", "B", 125, 141.25, 181.25, 7200],
  ] as const)("%s type %s, %i A: %d A and %d A, %i s", (standard, type, rated, stays, operates, seconds) => {
    const found = conventionalCurrents({ standard, type, rated });
    expect(found.nonOperating.value).toBeCloseTo(stays, 9);
    expect(found.operating.value).toBeCloseTo(operates, 9);
    expect(found.seconds).toBe(seconds);
    expect(found.operating).toMatchObject({ detail: { source: { basis: "memory" } } });
  });

  test("a semi-enclosed fuse blows at twice its rating, in a time that is not known", () => {
    const found = conventionalCurrents({ standard: "BS 3036", type: null, rated: 30 });
    expect(found.operating).toMatchObject({ value: 60, detail: { source: { basis: "published" } } });
    expect(1.45 / 0.725).toBeCloseTo(2, 12);
    expect([isKnown(found.nonOperating), found.seconds]).toEqual([false, null]);
  });

  test("there are none for other devices", () => {
    for (const device of [
      { standard: "BS 3871", type: "2", rated: 32 },
      { standard: "BS 88-2", type: "gG", rated: 10 },
      { standard: "BS 88-2", type: "gG", rated: 425 },
      { standard: "BS 88-2", type: "gM", rated: 32 },
      { standard: "BS 88-3", type: null, rated: 32 },
      { standard: "BS 3036", type: null, rated: 0 },
      { standard: "BS EN 60898", type: null, rated: 32 },
      { standard: "BS EN 60898", type: "B", rated: Number.NaN },
      { standard: "BS EN 60947-2", type: null, rated: 100 },
    ] as const) {
      const { nonOperating, operating, seconds } = conventionalCurrents(device);
      expect([isKnown(nonOperating), isKnown(operating), seconds], JSON.stringify(device)).toEqual([
        false,
        false,
        null,
      ]);
    }
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
    expect(tabulatedPermittedZs(device, 0.4)).toBe(tabulatedPermittedZs({ ...device }, 0.4));
    expect(permittedDisconnectionTime("TT", 230, "other")).toBe(permittedDisconnectionTime("TT", 240, "other"));
    expect(Object.isFrozen(operatingCurrent(device, 0.4))).toBe(true);
  });
});

describe("permitted disconnection time", () => {
  test.each([
    ["TN-S", 51, "final-41.1", 0.8],
    ["TN-S", 120, "final-41.1", 0.8],
    ["TN-S", 121, "final-41.1", 0.4],
    ["TN-S", 231, "final-41.1", 0.2],
    ["TN-S", 401, "final-41.1", 0.1],
    ["TT", 121, "final-41.1", 0.2],
    ["TT", 231, "final-41.1", 0.07],
    ["TT", 401, "final-41.1", 0.04],
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
    expect(permittedDisconnectionTime(system, volts, circuit)).toMatchObject({
      value: seconds,
      detail: { source: { basis: "published" } },
    });
  });

  test("IT systems and very low voltages have no row", () => {
    expect(isKnown(permittedDisconnectionTime("IT", 230, "other"))).toBe(false);
    expect(isKnown(permittedDisconnectionTime("TN-S", 50, "final-41.1"))).toBe(false);
    expect(isKnown(permittedDisconnectionTime("TN-S", Number.NaN, "other"))).toBe(false);
  });

  test.each([
    ["TN-S", 230, 1, "memory"],
    ["TN-C-S", 400, 0.4, "published"],
    ["TN-S", 500, 0.1, "published"],
    ["TT", 230, 0.4, "published"],
    ["TT", 400, 0.2, "published"],
    ["TT", 500, 0.1, "published"],
  ] as const)("%s at %i V d.c.: %d s, %s, in doubt", (system, volts, seconds, basis) => {
    expect(permittedDirectCurrentTime(system, volts)).toMatchObject({
      value: seconds,
      detail: { source: { basis, doubt: expect.any(String) } },
    });
  });

  test("the answer names its voltage band", () => {
    const band = (volts: number) => {
      const found = permittedDisconnectionTime("TN-S", volts, "final-41.1");
      return found.kind === "published" ? found.detail.row : found.detail.reason;
    };
    expect([100, 230, 400, 500].map(band)).toEqual([
      "TN, 50 V < U0 ≤ 120 V",
      "TN, 120 V < U0 ≤ 230 V",
      "TN, 230 V < U0 ≤ 400 V",
      "TN, U0 > 400 V",
    ]);
  });

  test("up to 120 V d.c. and in IT systems there is no time; reduced low voltage has 5 s from memory", () => {
    for (const [system, volts] of [
      ["TN-S", 120],
      ["TT", 60],
      ["IT", 230],
      ["TN-S", Number.NaN],
    ] as const)
      expect(isKnown(permittedDirectCurrentTime(system, volts))).toBe(false);
    expect(reducedLowVoltageTime).toMatchObject({ value: 5, detail: { source: { basis: "memory" } } });
  });

  test("the scope of Table 41.1 ends at 63 A with socket-outlets and 32 A without", () => {
    const scope = (ratedCurrent: number, socketOutlets: boolean) =>
      fallsUnderTable411("2018+A4", { ratedCurrent, socketOutlets });
    expect([scope(33, false), scope(64, true)]).toEqual([false, false]);
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
    ["BS 3036", "S2A", 2000],
    ["BS 3871", "M6", 6000],
    ["BS 3871", "M4.5", 4500],
    ["BS 3871", "M1", 1000],
    ["BS 3871", "M9", 9000],
  ] as const)("%s marked %s: %i A", (standard, mark, amperes) => {
    const found = breakingCapacityOfLegacy(standard, mark);
    expect(found).toMatchObject({ value: amperes, detail: { source: { basis: "published" } } });
    expect(breakingCapacityOf(standard, mark)).toBe(found);
  });

  test("the number of a BS 3871 mark is its capacity in kA", () => {
    for (const kiloamperes of [1, 1.5, 2, 3, 4, 4.5, 5, 6, 7, 8, 9])
      expect(breakingCapacityOfLegacy("BS 3871", `M${kiloamperes}`).value).toBe(kiloamperes * 1000);
  });

  test.each([
    ["BS 88-2", 80000],
    ["BS 88-3", 31500],
    ["BS 1362", 6000],
  ] as const)("%s has usually %i A, from memory", (standard, amperes) => {
    expect(typicalBreakingCapacity(standard)).toMatchObject({
      value: amperes,
      detail: { source: { basis: "memory", doubt: expect.any(String) } },
    });
  });

  test("a mark that is not known is no figure, and a usual rating says that it is from memory", () => {
    expect(isKnown(breakingCapacityOf("BS 1361"))).toBe(false);
    expect(isKnown(breakingCapacityOfLegacy("BS 1361", ""))).toBe(false);
    expect(isKnown(breakingCapacityOfLegacy("BS 3871", "M10"))).toBe(false);
    for (const standard of ["BS EN 60898", "BS EN 61009", "BS EN 60947-2", "BS 3036", "BS 3871"] as const)
      expect(isKnown(typicalBreakingCapacity(standard)), standard).toBe(false);
    expect(breakingCapacityOf("BS 88-2")).toMatchObject({ value: 80000, detail: { source: { basis: "memory" } } });
  });

  test("the energy ceiling needs class, type and marked capacity, and grows with the capacity", () => {
    const of = (markedBreakingCapacity: number, energyClass: number | undefined) =>
      energyLimitCeiling({ type: "B", rated: 32, markedBreakingCapacity, energyClass });
    expect([of(3000, 3).value, of(6000, 3).value, of(10000, 3).value]).toEqual([18000, 45000, 90000]);
    const ceilings = (type: "B" | "C", rated: number) =>
      [3000, 6000, 10000].map(
        (markedBreakingCapacity) => energyLimitCeiling({ type, rated, markedBreakingCapacity, energyClass: 3 }).value,
      );
    expect(ceilings("B", 16)).toEqual([15000, 35000, 70000]);
    // Type C is remembered with two sets of figures; the greater is on the safe side of both.
    for (const [i, other] of [17000, 40000, 80000].entries())
      expect(ceilings("C", 16)[i]).toBeGreaterThanOrEqual(other);
    for (const [i, other] of [20000, 52000, 100000].entries())
      expect(ceilings("C", 20)[i]).toBeGreaterThanOrEqual(other);
    // At 3 kA and below the doubt there is one set; 6 kA and 10 kA stand in the ratio 1 to 2, as for type B.
    expect([ceilings("C", 16)[0], ceilings("C", 32)[0]]).toEqual([17000, 20000]);
    for (const of of [ceilings("B", 16), ceilings("B", 32), ceilings("C", 16), ceilings("C", 32)])
      expect(of[2]).toBe(2 * (of[1] ?? Number.NaN));
    expect([ceilings("C", 16)[1], ceilings("C", 32)[1]]).toEqual([1.2 * 35000, 55000]);
    expect(ceilings("C", 16)).toEqual(ceilings("C", 6));
    expect(ceilings("C", 17)).toEqual(ceilings("C", 32));
    expect(ceilings("C", 33)).toEqual([Number.NaN, Number.NaN, Number.NaN]);
    for (const rated of [0, -6, Number.NaN]) expect(ceilings("B", rated)).toEqual([Number.NaN, Number.NaN, Number.NaN]);
    expect(energyLimitCeiling({ type: "C", rated: 20, markedBreakingCapacity: 6000, energyClass: 3 })).toMatchObject({
      detail: { source: { basis: "memory", doubt: expect.stringContaining("marked breaking capacity") } },
    });
    expect(isKnown(energyLimitCeiling({ type: "D", rated: 16, markedBreakingCapacity: 6000, energyClass: 3 }))).toBe(
      false,
    );
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
    // The conventional currents of today's breakers are not those of BS 3871.
    expect(timeCurrentCurve({ standard: "BS 3871", type: "2", rated: 30 })).toEqual([
      { seconds: 5, low: 120, high: 210, basis: "published" },
      { seconds: 0.1, low: 120, high: 210, basis: "published" },
    ]);
    expect(timeCurrentCurve({ standard: "BS 3036", type: null, rated: 30 })).toEqual([
      { seconds: 5, low: 87, high: 87, basis: "memory" },
      { seconds: 0.4, low: 210, high: 210, basis: "derived" },
    ]);
    expect(timeCurrentCurve({ standard: "BS 88-2", type: "gG", rated: 32 }).map(({ seconds }) => seconds)).toEqual([
      3600, 5, 0.4,
    ]);
  });
});
