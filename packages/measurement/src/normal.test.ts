import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { normalCdf } from "./normal.ts";

describe("normal distribution", () => {
  test.each([
    // Tables of the standard normal distribution, nine places.
    [0, 0.5],
    [1, 0.841344746],
    [1.96, 0.975002105],
    [-2, 0.022750132],
    [3, 0.998650102],
    [-3.5, 0.000232629],
  ])("Φ(%f) = %f", (z, chance) => {
    expect(normalCdf(z)).toBeCloseTo(chance, 9);
  });

  test("rises, and the two tails are alike", () => {
    const score = fc.double({ min: -38, max: 38, noNaN: true });
    fc.assert(
      fc.property(score, score, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(normalCdf(low)).toBeLessThanOrEqual(normalCdf(high) + 1e-15);
        expect(normalCdf(-a)).toBeCloseTo(1 - normalCdf(a), 14);
      }),
    );
  });

  test("ends in 0 and 1, and refuses what is no number", () => {
    expect([normalCdf(Number.NEGATIVE_INFINITY), normalCdf(Number.POSITIVE_INFINITY)]).toEqual([0, 1]);
    expect(() => normalCdf(Number.NaN)).toThrow(RangeError);
  });
});
