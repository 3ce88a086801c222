import { DEVICE_STANDARDS, type DeviceStandard, type DeviceType, isKnown } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { operatingCurrent, tabulatedPermittedZs } from "./index.ts";

/** Ω by rating in A. */
type Limits = Readonly<Record<number, number>>;

/**
 * Limits of BS 7671:2018+A2 Table 41.3, B and C for 0.4 s and 5 s, D for 0.4 s; for D at 5 s those of type C. The columns
 * agree with 0.95 of the 2008 table, which was read. For BS 3871 230 V × 0.95 ÷ (multiple × In).
 */
const BREAKER_LIMITS: readonly (readonly [type: DeviceType, multiple: number, seconds: readonly number[], Limits])[] = [
  [
    "B",
    5,
    [0.4, 5],
    {
      3: 14.57,
      6: 7.28,
      10: 4.37,
      16: 2.73,
      20: 2.19,
      25: 1.75,
      32: 1.37,
      40: 1.09,
      50: 0.87,
      63: 0.69,
      80: 0.55,
      100: 0.44,
      125: 0.35,
    },
  ],
  [
    "C",
    10,
    [0.4, 5],
    {
      6: 3.64,
      10: 2.19,
      16: 1.37,
      20: 1.09,
      25: 0.87,
      32: 0.68,
      40: 0.55,
      50: 0.44,
      63: 0.35,
      80: 0.27,
      100: 0.22,
      125: 0.17,
    },
  ],
  [
    "D",
    20,
    [0.4],
    {
      6: 1.82,
      10: 1.09,
      16: 0.68,
      20: 0.55,
      25: 0.44,
      32: 0.34,
      40: 0.27,
      50: 0.22,
      63: 0.17,
      80: 0.14,
      100: 0.11,
      125: 0.09,
    },
  ],
  [
    "D",
    10,
    [5],
    {
      6: 3.64,
      10: 2.19,
      16: 1.37,
      20: 1.09,
      25: 0.87,
      32: 0.68,
      40: 0.55,
      50: 0.44,
      63: 0.35,
      80: 0.27,
      100: 0.22,
      125: 0.17,
    },
  ],
  [
    "1",
    4,
    [0.4, 5],
    {
      5: 10.93,
      6: 9.1,
      10: 5.46,
      15: 3.64,
      16: 3.41,
      20: 2.73,
      25: 2.19,
      30: 1.82,
      32: 1.71,
      40: 1.37,
      45: 1.21,
      50: 1.09,
      60: 0.91,
      63: 0.87,
      80: 0.68,
      100: 0.55,
    },
  ],
  [
    "2",
    7,
    [0.4, 5],
    {
      5: 6.24,
      6: 5.2,
      10: 3.12,
      15: 2.08,
      16: 1.95,
      20: 1.56,
      25: 1.25,
      30: 1.04,
      32: 0.98,
      40: 0.78,
      45: 0.69,
      50: 0.62,
      60: 0.52,
      63: 0.5,
      80: 0.39,
      100: 0.31,
    },
  ],
  [
    "3",
    10,
    [0.4, 5],
    {
      5: 4.37,
      6: 3.64,
      10: 2.19,
      15: 1.46,
      16: 1.37,
      20: 1.09,
      25: 0.87,
      30: 0.73,
      32: 0.68,
      40: 0.55,
      45: 0.49,
      50: 0.44,
      60: 0.36,
      63: 0.35,
      80: 0.27,
      100: 0.22,
    },
  ],
  [
    "4",
    50,
    [0.4, 5],
    {
      5: 0.87,
      6: 0.73,
      10: 0.44,
      15: 0.29,
      16: 0.27,
      20: 0.22,
      25: 0.17,
      30: 0.15,
      32: 0.14,
      40: 0.11,
      45: 0.1,
      50: 0.09,
      60: 0.07,
      63: 0.07,
      80: 0.05,
      100: 0.04,
    },
  ],
];

/** Rating, current and limit of each fuse, at 0.4 s and at 5 s. The current is null where only the limit is known. */
type Points = readonly (readonly [rated: number, amperes: number | null, ohms: number])[];
const FUSE_POINTS: readonly (readonly [DeviceStandard, seconds: 0.4 | 5, Points])[] = [
  [
    "BS 88-2",
    0.4,
    [
      [2, null, 33.1],
      [4, 14, 15.6],
      [6, 28, 7.8],
      [10, 47, 4.65],
      [16, 90, 2.43],
      [20, 130, 1.68],
      [25, 170, 1.29],
      [32, 220, 0.99],
      [40, 290, 0.75],
      [50, null, 0.57],
      [63, 500, 0.44],
    ],
  ],
  [
    "BS 88-3",
    0.4,
    [
      [5, 22, 9.93],
      [16, 95, 2.3],
      [20, 113, 1.93],
      [32, 240, 0.91],
      [45, null, 0.57],
      [63, null, 0.36],
    ],
  ],
  [
    "BS 3036",
    0.4,
    [
      [5, 24, 9.1],
      [15, 90, 2.43],
      [20, 130, 1.68],
      [30, 210, 1.04],
      [45, 390, 0.56],
      [60, 546, 0.4],
    ],
  ],
  [
    "BS 1362",
    0.4,
    [
      [3, 14, 15.6],
      [13, 95, 2.3],
    ],
  ],
  [
    "BS 88-2",
    5,
    [
      [2, null, 44.0],
      [4, null, 21.0],
      [6, null, 12.0],
      [10, null, 6.8],
      [16, null, 4.0],
      [20, null, 2.8],
      [25, null, 2.2],
      [32, null, 1.7],
      [40, null, 1.3],
      [50, null, 0.99],
      [63, null, 0.78],
      [80, null, 0.55],
      [100, null, 0.42],
      [125, null, 0.32],
      [160, null, 0.27],
      [200, null, 0.18],
    ],
  ],
  [
    "BS 88-3",
    5,
    [
      [5, null, 14.6],
      [16, null, 3.9],
      [20, null, 3.2],
      [32, null, 1.6],
      [45, null, 1.0],
      [63, null, 0.68],
      [80, null, 0.51],
      [100, null, 0.38],
    ],
  ],
  [
    "BS 3036",
    5,
    [
      [5, 13, 16.8],
      [15, 43, 5.08],
      [20, 60, 3.64],
      [30, 87, 2.51],
      [45, 145, 1.51],
      [60, 205, 1.07],
      [100, 430, 0.51],
    ],
  ],
  [
    "BS 1362",
    5,
    [
      [3, null, 22.0],
      [13, 60, 3.64],
    ],
  ],
  [
    "BS 1361",
    0.4,
    [
      [5, 22, 9.93],
      [15, 70, 3.12],
      [20, 135, 1.62],
      [30, 200, 1.09],
    ],
  ],
  [
    "BS 1361",
    5,
    [
      [5, null, 15.58],
      [15, null, 4.75],
      [20, null, 2.66],
      [30, null, 1.75],
      [45, null, 0.91],
      [60, null, 0.66],
      [80, null, 0.47],
      [100, null, 0.34],
    ],
  ],
  [
    "BS 88-2.2",
    0.4,
    [
      [6, 27, 8.09],
      [10, 45, 4.86],
      [16, 85, 2.57],
      [20, 130, 1.68],
      [25, 160, 1.37],
      [32, 220, 0.99],
    ],
  ],
  [
    "BS 88-6",
    0.4,
    [
      [6, 27, 8.09],
      [10, 45, 4.86],
      [16, 85, 2.57],
      [20, 130, 1.68],
      [25, 160, 1.37],
      [32, 220, 0.99],
    ],
  ],
];

/** Limits without Cmin as older editions print them: 230 V ÷ Ia. */
const OLDER: readonly (readonly [DeviceStandard, seconds: 0.4 | 5, Limits])[] = [
  ["BS 1361", 0.4, { 5: 10.45, 15: 3.28, 20: 1.7, 30: 1.15 }],
  ["BS 1361", 5, { 5: 16.4, 15: 5.0, 20: 2.8, 30: 1.84, 45: 0.96, 60: 0.7, 80: 0.5, 100: 0.36 }],
  ["BS 88-2.2", 0.4, { 6: 8.52, 10: 5.11, 16: 2.7, 20: 1.77, 25: 1.44, 32: 1.04 }],
];

/** 218.5 V ÷ (multiple × In) in hundredths of an ohm, half up, in whole numbers. */
const hundredths = (current: number) => Math.floor((2 * 21850 + current) / (2 * current));

describe("limits of breakers in print", () => {
  test.each(BREAKER_LIMITS)("type %s, %i times, at %j s", (type, multiple, times, limits) => {
    const standards: readonly DeviceStandard[] =
      type >= "1" && type <= "4" ? ["BS 3871"] : ["BS EN 60898", "BS EN 61009"];
    for (const [rating, ohms] of Object.entries(limits)) {
      const rated = Number(rating);
      expect(hundredths(multiple * rated)).toBe(Math.round(ohms * 100));
      for (const standard of standards) {
        for (const seconds of times) {
          expect(tabulatedPermittedZs({ standard, type, rated }, seconds).value, `${rated} A`).toBe(ohms);
          expect(operatingCurrent({ standard, type, rated }, seconds).value, `${rated} A`).toBe(multiple * rated);
        }
      }
    }
  });

  test("limits are derived, those of type D at 5 s remembered", () => {
    const basis = (type: DeviceType, seconds: number, standard: DeviceStandard = "BS EN 60898") => {
      const found = tabulatedPermittedZs({ standard, type, rated: 20 }, seconds);
      return found.kind === "published" ? found.detail.source.basis : null;
    };
    expect([basis("B", 5), basis("C", 0.4), basis("D", 0.4), basis("D", 5), basis("2", 5, "BS 3871")]).toEqual([
      "derived",
      "derived",
      "derived",
      "memory",
      "derived",
    ]);
  });

  test("nothing else is in print", () => {
    for (const [type, , times, limits] of BREAKER_LIMITS) {
      const standard = type >= "1" && type <= "4" ? "BS 3871" : "BS EN 60898";
      for (let rated = 1; rated <= 130; rated++) {
        for (const seconds of times)
          expect(isKnown(tabulatedPermittedZs({ standard, type, rated }, seconds)), `${type} ${rated}`).toBe(
            rated in limits,
          );
        expect(isKnown(tabulatedPermittedZs({ standard, type, rated }, 0.2))).toBe(false);
      }
    }
  });
});

describe("points of fuses", () => {
  test.each(FUSE_POINTS)("%s at %d s", (standard, seconds, points) => {
    for (const [rated, amperes, ohms] of points) {
      const device = { standard, type: null, rated };
      expect(tabulatedPermittedZs(device, seconds).value, `${rated} A`).toBe(ohms);
      const found = operatingCurrent(device, seconds);
      if (amperes !== null) expect(found.value, `${rated} A`).toBe(amperes);
      // Both are rounded: the limit to its last printed digit, which is worth most where the limit is least.
      else expect(found.value * ohms, `${rated} A`).toBeCloseTo(218.5, 9);
      expect(Math.abs(218.5 / found.value - ohms)).toBeLessThanOrEqual(ohms < 10 ? 0.00501 : 0.05);
    }
  });

  test("which points were recovered from a table that was read, and which are remembered", () => {
    const recovered: Readonly<Partial<Record<DeviceStandard, readonly number[]>>> = {
      "BS 88-2": [6, 10, 16, 20, 25, 32],
      "BS 88-3": [32],
      "BS 3036": [5, 15, 20, 30],
      "BS 1362": [3, 13],
      "BS 1361": [5, 15, 20, 30],
      "BS 88-2.2": [6, 10, 16, 20, 25, 32],
      "BS 88-6": [6, 10, 16, 20, 25, 32],
    };
    for (const [standard, seconds, points] of FUSE_POINTS) {
      for (const [rated] of points) {
        const basis = seconds === 0.4 && recovered[standard]?.includes(rated) === true ? "derived" : "memory";
        const device = { standard, type: null, rated };
        for (const look of [operatingCurrent, tabulatedPermittedZs])
          expect(look(device, seconds), `${standard} ${rated}`).toMatchObject({ detail: { source: { basis } } });
      }
    }
  });

  test("nothing else has a point", () => {
    for (const standard of DEVICE_STANDARDS) {
      for (const seconds of [0.4, 5]) {
        const listed = FUSE_POINTS.filter(([one, time]) => one === standard && time === seconds);
        if (listed.length === 0) continue;
        const ratings = listed.flatMap(([, , points]) => points.map(([rated]) => rated));
        expect(new Set(ratings).size).toBe(ratings.length);
        for (let rated = 1; rated <= 250; rated++)
          expect(isKnown(tabulatedPermittedZs({ standard, type: null, rated }, seconds)), `${standard} ${rated}`).toBe(
            ratings.includes(rated),
          );
      }
    }
  });

  test.each(OLDER)(
    "%s at %d s: the older limit is 230 V over the current, to its last digit",
    (standard, seconds, limits) => {
      for (const [rated, ohms] of Object.entries(limits)) {
        const amperes = operatingCurrent({ standard, type: null, rated: Number(rated) }, seconds).value;
        expect(Math.abs(230 / amperes - ohms), `${rated} A`).toBeLessThanOrEqual(0.0065 * Math.max(1, ohms / 4));
      }
    },
  );
});
