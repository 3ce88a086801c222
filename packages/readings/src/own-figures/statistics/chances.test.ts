import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MeanRatio } from "../evidence.ts";
import { atLeastOf, chiSquaredAbove, logNormal, logSum, someAlike, withinNormal } from "./chances.ts";

const chance = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe("chances", () => {
  test("of normal errors and chi-squared are those of the printed tables", () => {
    // 68.27, 95.45 and 99.73 % within one, two and three standard deviations; 27.877 is the 0.1 % point of chi-squared, 9.
    expect(withinNormal(1, 1)).toBeCloseTo(0.682689492, 8);
    expect(withinNormal(2, 1)).toBeCloseTo(0.954499736, 8);
    expect(withinNormal(3, 1)).toBeCloseTo(0.997300204, 8);
    expect(chiSquaredAbove(27.877, 9)).toBeCloseTo(0.001, 5);
    expect(chiSquaredAbove(0, 9)).toBe(1);
  });

  test("of a count are those of listing every outcome", () => {
    fc.assert(
      fc.property(fc.array(chance, { minLength: 1, maxLength: 7 }), fc.nat(7), (chances, least) => {
        let sum = 0;
        for (let outcome = 0; outcome < 2 ** chances.length; outcome++) {
          const happens = chances.map((_, i) => ((outcome >> i) & 1) === 1);
          if (happens.filter(Boolean).length < least) continue;
          sum += chances.reduce((product, p, i) => product * (happens[i] === true ? p : 1 - p), 1);
        }
        expect(atLeastOf(chances, least)).toBeCloseTo(sum, 10);
      }),
    );
  });

  test("of a count of very many is bounded from above, and not far", () => {
    const many = Array.from({ length: 2001 }, () => 0.3);
    const few = many.slice(1);
    for (const least of [500, 650, 700, 800, 2000]) {
      const exact = atLeastOf(few, least);
      const bounded = atLeastOf(many, least);
      expect(bounded).toBeGreaterThanOrEqual(exact);
      if (exact > 0 && least >= 650) expect(Math.log(bounded)).toBeLessThan(0.5 * Math.log(exact));
    }
    expect(atLeastOf(many, 2002)).toBe(0);
  });

  test("some alike: the bound is never below the exact chance that they all show one value", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 6 }), fc.array(chance, { minLength: 2, maxLength: 6 }), (n, weights) => {
        const all = weights.reduce((sum, weight) => sum + weight, 0);
        const values = weights.map((weight) => weight / all);
        const exact = values.reduce((sum, p) => sum + p ** n, 0);
        expect(someAlike(n, n, Math.max(...values))).toBeGreaterThanOrEqual(exact - 1e-12);
      }),
    );
    expect(someAlike(1, 9, 0.1)).toBe(1);
    // C(4, 2) · 0.01
    expect(someAlike(2, 4, 0.01)).toBeCloseTo(0.06, 12);
  });

  test("sums and densities on the logarithmic scale are those off it", () => {
    expect(Math.exp(logSum(Math.log(0.3), Math.log(0.2)))).toBeCloseTo(0.5, 12);
    expect(logSum(Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY)).toBe(Number.NEGATIVE_INFINITY);
    expect(Math.exp(logNormal(1, 1, 2))).toBeCloseTo(1 / (2 * Math.sqrt(2 * Math.PI)), 12);
  });
});

describe("a mean of likelihood ratios", () => {
  test("bounds the chance by its inverse, and more ways to look make it weaker", () => {
    const few = new MeanRatio();
    few.add(Math.log(5000));
    expect(few.chance).toBeCloseTo(1 / 5000, 12);
    few.addNothing(9);
    expect(few.chance).toBeCloseTo(10 / 5000, 12);
    expect(new MeanRatio().chance).toBe(1);
    const none = new MeanRatio();
    none.add(-3);
    expect(none.chance).toBe(1);
  });
});
