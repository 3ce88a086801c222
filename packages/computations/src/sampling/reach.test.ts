import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chanceOfAtMost, chancesFound } from "./hypergeometric.ts";
import { chanceOfMissing, leastDefective, mostDefective, sampleFor, widened } from "./reach.ts";

const samples = fc
  .tuple(
    fc.integer({ min: 1, max: 300 }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([population, part, bad]) => {
    const inspected = Math.max(1, Math.round(part * population));
    return { population, inspected, found: Math.round(bad * inspected) };
  });
const assurance = fc.constantFrom(0.8, 0.9, 0.95, 0.99);

describe("what a sample says", () => {
  test.each([
    // Worked once with binomial coefficients: C(39,10)/C(50,10) = 0.0619, C(38,10)/C(50,10) = 0.0460.
    [50, 10, 0, 11],
    [50, 5, 0, 21],
    [300, 60, 0, 13],
    [100, 20, 0, 12],
  ])("%i parts, %i opened, %i defective: up to %i", (population, inspected, found, most) => {
    expect(mostDefective(population, inspected, found, 0.95)).toBe(most);
  });

  test("a fault rate of 5 % is missed by 20 of 100 with a chance of 0.32", () => {
    expect(chanceOfMissing(100, 5, 20)).toBeCloseTo(0.3193, 4);
  });

  test("everything opened leaves nothing open", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), assurance, (population, level) => {
        for (const found of [0, 1, population]) {
          expect(mostDefective(population, population, found, level)).toBe(found);
          expect(leastDefective(population, population, found, level)).toBe(found);
        }
      }),
    );
  });

  test("the bound is the largest number that is still likely enough", () => {
    fc.assert(
      fc.property(samples, assurance, ({ population, inspected, found }, level) => {
        const most = mostDefective(population, inspected, found, level);
        expect(chanceOfAtMost(found, population, most, inspected)).toBeGreaterThan(1 - level);
        if (most < population - (inspected - found))
          expect(chanceOfAtMost(found, population, most + 1, inspected)).toBeLessThanOrEqual(1 - level);
        expect(leastDefective(population, inspected, found, level)).toBeLessThanOrEqual(most);
      }),
    );
  });

  test("more found or more assurance never lowers the bound; more opened never raises it", () => {
    fc.assert(
      fc.property(samples, ({ population, inspected, found }) => {
        const most = mostDefective(population, inspected, found, 0.95);
        if (found < inspected)
          expect(mostDefective(population, inspected, found + 1, 0.95)).toBeGreaterThanOrEqual(most);
        expect(mostDefective(population, inspected, found, 0.99)).toBeGreaterThanOrEqual(most);
        if (inspected < population)
          expect(mostDefective(population, inspected + 1, found, 0.95)).toBeLessThanOrEqual(most);
      }),
    );
  });

  test("a planned sample is the smallest that gives the assurance", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 200 }), fc.nat({ max: 20 }), (population, accepted) => {
        const size = sampleFor(population, accepted, 0.95);
        expect(mostDefective(population, size, 0, 0.95)).toBeLessThanOrEqual(accepted);
        if (size > 1) expect(mostDefective(population, size - 1, 0, 0.95)).toBeGreaterThan(accepted);
      }),
    );
  });

  test("a defect found widens the sample, and more defects widen it more", () => {
    const clean = widened(100, 20, 0, 12, 0.95);
    expect(clean).toEqual({ inspectInAll: 20, more: 0, all: false });
    const one = widened(100, 20, 1, 12, 0.95);
    const two = widened(100, 20, 2, 12, 0.95);
    expect(one.more).toBeGreaterThan(0);
    expect(two.more).toBeGreaterThan(one.more);
    expect(widened(10, 2, 1, 0, 0.95)).toEqual({ inspectInAll: 10, more: 8, all: true });
  });

  test("chances add up, and what cannot be is refused", () => {
    fc.assert(
      fc.property(samples, ({ population, inspected, found }) => {
        expect(chancesFound(population, found, inspected).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
      }),
    );
    for (const [population, defective, inspected] of [
      [10, 11, 5],
      [10, 5, 11],
      [10, -1, 5],
      [10.5, 1, 1],
      [Number.NaN, 0, 0],
    ] as const)
      expect(() => chancesFound(population, defective, inspected)).toThrow(RangeError);
  });
});
