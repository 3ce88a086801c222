import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { diagnoseRingReadings, type RingInput, type RingReading } from "./index.ts";

const ACCURACY = { ofReading: 0.02, digits: 2 };
const ohm = (shown: number): RingReading => ({ shown, resolution: 0.01, bound: "exact", accuracy: ACCURACY });
const OPEN: RingReading = { shown: 99.9, resolution: 0.1, bound: "above", accuracy: ACCURACY };
const read = (one: number | "open") => (one === "open" ? OPEN : ohm(one));

function ring(
  ends: readonly (number | "open")[],
  lineNeutral: readonly (number | "open")[],
  lineCpc: readonly (number | "open")[],
): RingInput {
  const [r1 = "open", rn = "open", r2 = "open"] = ends;
  return {
    r1: read(r1),
    rn: read(rn),
    r2: read(r2),
    points: lineNeutral.map((one, i) => ({
      name: `socket ${i + 1}`,
      lineNeutral: read(one),
      ...(lineCpc[i] === undefined ? {} : { lineCpc: read(lineCpc[i]) }),
    })),
    orderKnown: true,
    linePerMetre: { value: 0.00719, deviation: 0.00017 },
    neutralRatio: { value: 1, deviation: 0.02 },
    cpcRatio: { value: 1.633, deviation: 0.04 },
  };
}

const SOUND = ring([0.44, 0.45, 0.72], [0.22, 0.22, 0.23, 0.22, 0.22], [0.27, 0.29, 0.29, 0.29, 0.28]);
const leader = (input: RingInput) => diagnoseRingReadings(input).explanations[0]?.faults;

describe("rings by hand", () => {
  test("a sound ring of 60 m: quarters of 0.44 + 0.45 and 0.44 + 0.72", () => {
    const diagnosis = diagnoseRingReadings(SOUND);
    expect(diagnosis.explanations[0]?.faults).toEqual([]);
    expect(diagnosis).toMatchObject({ leading: 1, accounts: true });
    expect(Math.abs((diagnosis.explanations[0]?.metres ?? 0) - 0.44 / 0.00719)).toBeLessThan(2);
  });

  test("a line open in the third leg: the line to cpc reading falls to it and rises after, as the way round does", () => {
    // Five points at sixths. Before the break x·r1 + (1 − x)·r2, after it the other way: 0.67 0.62 | 0.58 0.62 0.67.
    const faults = leader(ring(["open", 0.44, 0.72], [0.44, 0.44, 0.44, 0.44, 0.44], [0.68, 0.62, 0.58, 0.62, 0.67]));
    expect(faults).toMatchObject([{ kind: "open", conductors: ["line"] }]);
    const last = leader(ring(["open", 0.44, 0.72], [0.44, 0.44, 0.44, 0.44, 0.44], [0.68, 0.63, 0.58, 0.53, 0.49]));
    expect(last).toMatchObject([{ kind: "open", conductors: ["line"], place: { legs: [5] } }]);
    const first = leader(ring(["open", 0.44, 0.72], [0.44, 0.44, 0.44, 0.44, 0.44], [0.49, 0.53, 0.58, 0.63, 0.68]));
    expect(first).toMatchObject([{ kind: "open", conductors: ["line"], place: { legs: [0] } }]);
  });

  test("0.12 Ω more at one point line to neutral and 0.16 Ω more line to cpc is 8 m of spur", () => {
    const [fault] =
      leader(ring([0.44, 0.45, 0.72], [0.22, 0.22, 0.34, 0.22, 0.23], [0.27, 0.29, 0.45, 0.29, 0.28])) ?? [];
    expect(fault).toMatchObject({ kind: "spur", point: 2 });
    expect(fault?.kind === "spur" ? fault.metres?.value : 0).toBeGreaterThan(7);
    expect(fault?.kind === "spur" ? fault.metres?.value : 99).toBeLessThan(9.5);
  });

  test("0.30 Ω more of r1 that is not in rn is a joint in the line", () => {
    // (0.44 × 0.74) ÷ 1.18 = 0.276 Ω line to neutral wherever the joint is.
    const faults = leader(ring([0.74, 0.44, 0.72], [0.28, 0.27, 0.28, 0.28, 0.27], [0.38, 0.36, 0.36, 0.35, 0.3]));
    expect(faults).toMatchObject([{ kind: "joint", conductor: "line" }]);
  });

  test("an r2 0.20 Ω too high, while every reading at the points is that of a sound ring, is the leads", () => {
    const faults = leader(ring([0.44, 0.45, 0.92], [0.22, 0.22, 0.23, 0.22, 0.22], [0.27, 0.29, 0.29, 0.29, 0.28]));
    expect(faults).toMatchObject([{ kind: "leads-not-nulled", readings: "r2" }]);
  });

  test("readings that rise from nothing to a quarter and fall again: the ends were joined to those of their own side", () => {
    const faults = leader(ring([0.44, 0.45, 0.72], [0.12, 0.19, 0.22, 0.2, 0.13], [0.16, 0.26, 0.29, 0.26, 0.16]));
    expect(faults).toMatchObject([{ kind: "same-ends-joined", pairs: ["line-neutral", "line-cpc"] }]);
  });

  test.each([
    ["line-neutral", [0.22, 0.22, 0.22], [0.28, "open", 0.28]],
    ["line-cpc", [0.22, "open", 0.22], [0.28, 0.29, 0.28]],
    ["neutral-cpc", [0.22, "open", 0.22], [0.28, "open", 0.28]],
  ] as const)(
    "%s swapped at the second point; the conductor off is named beside it and the next reading tells",
    (pair, lineNeutral, lineCpc) => {
      const diagnosis = diagnoseRingReadings(ring([0.44, 0.45, 0.72], lineNeutral, lineCpc));
      expect(diagnosis.explanations[0]?.faults).toMatchObject([{ kind: "swapped", pair, point: 1 }]);
      expect(diagnosis.leading).toBeGreaterThan(1);
      expect(diagnosis.explanations.slice(0, diagnosis.leading).map(({ faults }) => faults[0]?.kind)).toContain("off");
      expect(diagnosis.next?.separation).toBeGreaterThan(50);
      expect(diagnosis.next?.asked).toMatchObject({ point: 1 });
    },
  );

  test("all open: two rings crossed at the board, which a cable cut through cannot be told from", () => {
    const open = ["open", "open", "open"] as const;
    const { explanations, leading, next } = diagnoseRingReadings(ring(open, open, open));
    expect(
      explanations
        .slice(0, leading)
        .map(({ faults }) => faults[0]?.kind)
        .sort(),
    ).toEqual(["crossed-rings", "open"]);
    expect(explanations[0]?.faults).toEqual([{ kind: "crossed-rings" }]);
    expect(next?.separation).toBeGreaterThan(50);
  });

  test("without readings at the points the ends alone are judged, and no place is made up", () => {
    const diagnosis = diagnoseRingReadings(ring([0.74, 0.44, 0.72], [], []));
    expect(diagnosis.explanations[0]?.faults[0]).toMatchObject({ kind: "joint", conductor: "line", place: undefined });
    expect(diagnosis.leading).toBeGreaterThan(1);
  });

  test("without the order of the points a fault is named and its place is not", () => {
    const unordered = { ...ring(["open", 0.44, 0.72], [0.44, 0.44, 0.44], [0.6, 0.5, 0.65]), orderKnown: false };
    expect(leader(unordered)).toMatchObject([{ kind: "open", conductors: ["line"], place: undefined }]);
    const bridged = ring(
      [0.25, 0.26, 0.41],
      [0.19, 0.13, 0.22, 0.13, 0.2, 0.13, 0.13],
      [0.26, 0.16, 0.3, 0.17, 0.25, 0.17, 0.17],
    );
    expect(leader({ ...bridged, orderKnown: false })).toMatchObject([{ kind: "interconnection", from: undefined }]);
  });
});

describe("laws", () => {
  const half = fc.integer({ min: 0, max: 60 }).map((hundredths) => hundredths / 100);
  const any = fc.oneof(half, fc.constant("open" as const));
  const readings = fc
    .integer({ min: 0, max: 9 })
    .chain((count) =>
      fc.tuple(
        fc.array(any, { minLength: 3, maxLength: 3 }),
        fc.array(any, { minLength: count, maxLength: count }),
        fc.array(any, { minLength: count, maxLength: count }),
        fc.boolean(),
      ),
    );

  test("whatever is read: probabilities add up, places lie in the ring, bands hold their value, and no number is lost", () => {
    fc.assert(
      fc.property(readings, ([ends, lineNeutral, lineCpc, orderKnown]) => {
        const { explanations, leading, next } = diagnoseRingReadings({
          ...ring(ends, lineNeutral, lineCpc),
          orderKnown,
        });
        expect(leading).toBeGreaterThanOrEqual(1);
        const all = explanations.reduce((sum, { probability }) => sum + probability, 0);
        expect(all).toBeGreaterThan(0.5);
        expect(all).toBeLessThan(1 + 1e-9);
        const numbers = JSON.stringify({ explanations, next }, (_, value) => {
          if (typeof value === "number" && Number.isNaN(value)) throw new Error("not a number");
          return value;
        });
        expect(numbers.length).toBeGreaterThan(0);
        for (const { faults, pointsAt } of explanations) {
          for (const place of pointsAt) expect(place > 0 && place < 1).toBe(true);
          for (const fault of faults) {
            if (!("place" in fault) || fault.place === undefined) continue;
            const { low, value, high } = fault.place.part;
            expect(low <= value + 1e-9 && value <= high + 1e-9 && low >= 0 && high <= 1).toBe(true);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test("the same ring walked the other way has its faults at the other end", () => {
    const there = ring(["open", 0.44, 0.72], [0.44, 0.44, 0.44, 0.44, 0.44], [0.68, 0.63, 0.58, 0.53, 0.67]);
    const back = { ...there, points: [...there.points].reverse() };
    const [one] = leader(there) ?? [];
    const [other] = leader(back) ?? [];
    const partOf = (fault: typeof one) =>
      fault?.kind === "open" ? (fault.place?.part.value ?? Number.NaN) : Number.NaN;
    expect(partOf(one) + partOf(other)).toBeCloseTo(1, 1);
  });

  test("a better meter makes a finding surer", () => {
    const faulty = ring([0.54, 0.45, 0.72], [0.24, 0.24, 0.25], [0.31, 0.31, 0.3]);
    const finer = (one: RingReading): RingReading => ({ ...one, accuracy: { ofReading: 0.005, digits: 1 } });
    const fine = { ...faulty, r1: finer(faulty.r1), rn: finer(faulty.rn), r2: finer(faulty.r2) };
    const soundPart = (input: RingInput) =>
      diagnoseRingReadings(input).explanations.find(({ faults }) => faults.length === 0)?.probability ?? 0;
    expect(soundPart(fine)).toBeLessThanOrEqual(soundPart(faulty));
  });
});

describe("hostile numbers", () => {
  test.each([
    ["not a number", Number.NaN],
    ["less than nothing", -1],
    ["without end", Number.POSITIVE_INFINITY],
  ])("%s is refused", (_, shown) => {
    expect(() => diagnoseRingReadings({ ...SOUND, r1: { ...ohm(1), shown } })).toThrow(RangeError);
    expect(() => diagnoseRingReadings({ ...SOUND, r1: { ...ohm(1), resolution: shown } })).toThrow(RangeError);
  });

  test("two hundred points, readings of nothing and of hundreds of ohms come to an end", () => {
    const points = Array.from({ length: 200 }, (_, i) => (i % 3 === 0 ? 0 : i % 3 === 1 ? 300 : 0.2));
    expect(() => diagnoseRingReadings(ring([0, 500, 0.01], points, points))).not.toThrow();
    expect(() => diagnoseRingReadings(ring(["open", 0, 900], points, points))).not.toThrow();
    expect(() =>
      diagnoseRingReadings(
        ring(
          [0, 0, 0],
          Array.from({ length: 401 }, () => 0),
          [],
        ),
      ),
    ).toThrow(RangeError);
  });
});
