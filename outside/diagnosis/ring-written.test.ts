import { describe, expect, test } from "vitest";
import {
  diagnoseRingReadings,
  type RingInput,
  type RingReading,
} from "../../packages/readings/src/diagnosis/ring/index.ts";
import { WRITTEN_KINDS } from "./written-rings.ts";
import { twoFaultsScore, writtenScore } from "./written-score.ts";

const RINGS = 14;
const SEED = 77;
/** Milliseconds a test may take on a slow and busy machine. */
const PATIENCE = 300_000;

describe("what is wrong with the schedule or the test of a sound ring (ring-results.md has the full count)", () => {
  test.each(WRITTEN_KINDS)(
    "$name: first in 85 of 100, or named beside what cannot be told from it",
    (kind) => {
      const { named, rings, wrong } = writtenScore(kind, RINGS, SEED);
      expect(named / rings).toBeGreaterThanOrEqual(0.85);
      expect(wrong).toBeLessThanOrEqual(1);
    },
    PATIENCE,
  );
});

test(
  "two faults of a ring at once, neither a spur: both named first in six of ten, invisible ones and all",
  () => {
    const { first, named, rings } = twoFaultsScore(50, 23);
    expect(first / rings).toBeGreaterThanOrEqual(0.6);
    expect(named / rings).toBeGreaterThanOrEqual(0.7);
  },
  PATIENCE,
);

const ACCURACY = { ofReading: 0.02, digits: 2 };
const ohm = (shown: number): RingReading => ({ shown, resolution: 0.01, bound: "exact", accuracy: ACCURACY });

/** A ring of 60 m, 2.5/1.5 mm², with a joint in the cpc after a part of it; readings without any error. */
function withJoint(ohms: number, at: number): RingInput {
  const [line, cpc] = [0.432, 0.7055];
  const round = line + cpc + ohms;
  const across = (x: number) => {
    const way = x * line + (1 - x) * cpc + (x < at ? ohms : 0);
    return (way * (round - way)) / round;
  };
  return {
    r1: ohm(line),
    rn: ohm(line),
    r2: ohm(cpc + ohms),
    points: [0.15, 0.3, 0.45, 0.6, 0.8].map((x, i) => ({
      name: `socket ${i + 1}`,
      lineNeutral: ohm(line / 2),
      lineCpc: ohm(across(x)),
    })),
    orderKnown: true,
    linePerMetre: { value: 0.00719, deviation: 0.0002 },
    neutralRatio: { value: 1, deviation: 0.0286 },
    cpcRatio: { value: 1.633, deviation: 0.0467 },
    cpcSizes: [
      { size: 1, ratio: { value: 2.443, deviation: 0.07 } },
      { size: 2.5, ratio: { value: 1, deviation: 0.0286 } },
    ],
  };
}

/** What a search in steps leaves of a probability. */
const SEARCHED = 0.005;

describe("the larger a joint in the protective conductor", () => {
  const sizes = Array.from({ length: 36 }, (_, i) => i * 0.02);
  test.each([0.08, 0.35, 0.7])(
    "a part %d of the way round: the less a sound ring, the more the joint against it, and it leads for good",
    (at) => {
      const seen = sizes.map((ohms) => {
        const { explanations, sound } = diagnoseRingReadings(withJoint(ohms, at));
        const part = explanations
          .filter(({ faults }) => faults.some((one) => one.kind === "joint" && one.conductor === "cpc"))
          .reduce((sum, { probability }) => sum + probability, 0);
        const [first] = explanations[0]?.faults ?? [];
        return { sound, part, leads: first?.kind === "joint" && first.conductor === "cpc" };
      });
      const [leads] = [seen.findIndex((one) => one.leads)];
      expect(sizes[leads]).toBeLessThanOrEqual(0.18);
      for (const [i, one] of seen.entries()) {
        const before = seen[i - 1];
        if (i > leads) expect(one.leads).toBe(true);
        if (before === undefined) continue;
        expect(one.sound).toBeLessThanOrEqual(before.sound + SEARCHED);
        // In the first hundredths it is one of many small things.
        if (before.part > 0.01)
          expect(one.part / one.sound).toBeGreaterThanOrEqual((before.part / before.sound) * (1 - SEARCHED));
      }
    },
    PATIENCE,
  );
});

describe("none of these", () => {
  test("readings that no explanation fits are not called most likely anything", () => {
    const read = [
      [0.22, 0.29],
      [0.06, 0.28],
      [0.22, 0.1],
      [0.07, 0.29],
      [0.22, 0.09],
      [0.05, 0.29],
      [0.22, 0.08],
    ] as const;
    const points = read.map(([lineNeutral, lineCpc], i) => ({
      name: `socket ${i + 1}`,
      lineNeutral: ohm(lineNeutral),
      lineCpc: ohm(lineCpc),
    }));
    const { explanations, accounts } = diagnoseRingReadings({ ...withJoint(0, 0.5), points });
    expect(explanations[0]?.faults).toMatchObject([{ kind: "none-of-these" }]);
    expect(accounts).toBe(false);
  });

  test("of a sound ring it has a share that is small and never nothing", () => {
    const { explanations } = diagnoseRingReadings(withJoint(0, 0.5));
    const none = explanations.find(({ faults }) => faults[0]?.kind === "none-of-these");
    expect(none?.probability).toBeGreaterThan(0.001);
    expect(none?.probability).toBeLessThan(0.02);
  });
});

test("a loose connection that was seen makes a joint likelier, and nothing else", () => {
  const ring = withJoint(0.1, 0.35);
  const partOf = (input: RingInput) =>
    diagnoseRingReadings(input)
      .explanations.filter(({ faults }) => faults.some(({ kind }) => kind === "joint"))
      .reduce((sum, { probability }) => sum + probability, 0);
  const seen = new Map([["joint", 20]]);
  expect(partOf({ ...ring, seen })).toBeGreaterThan(2 * partOf(ring));
});
