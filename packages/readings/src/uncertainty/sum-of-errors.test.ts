import { normalCdf } from "@good-grounds/measurement";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chanceAtMost } from "./sum-of-errors.ts";

const ROOT_3 = Math.sqrt(3);
const deviation = fc.double({ min: 1e-6, max: 1e3, noNaN: true });
const place = fc.double({ min: -3, max: 3, noNaN: true });

describe("a sum of rectangular errors", () => {
  test("one alone is rectangular", () => {
    fc.assert(
      fc.property(deviation, place, (u, z) => {
        const rectangle = Math.min(1, Math.max(0, (z + ROOT_3) / (2 * ROOT_3)));
        expect(chanceAtMost(z * u, [u])).toBeCloseTo(rectangle, 12);
      }),
    );
  });

  test("two equal ones make a triangle", () => {
    fc.assert(
      fc.property(place, (z) => {
        const x = Math.max(-2, Math.min(2, z)) / 2;
        const triangle = x <= 0 ? (1 + x) ** 2 / 2 : 1 - (1 - x) ** 2 / 2;
        expect(chanceAtMost(2 * x * ROOT_3, [1, 1])).toBeCloseTo(triangle, 12);
      }),
    );
  });

  test("three equal ones lie within 0.0033 of the exact sum of three", () => {
    // Irwin and Hall: the sum of three uniform values on 0 to 1 has the distribution Σ(−1)^k·C(3,k)·(x − k)³/3!.
    const exact = (x: number) =>
      [1, -3, 3, -1].reduce((sum, weight, k) => sum + (weight * Math.max(0, x - k) ** 3) / 6, 0);
    for (let x = 0; x <= 3; x += 0.05)
      expect(Math.abs(chanceAtMost((x - 1.5) * 2 * ROOT_3, [1, 1, 1]) - exact(x))).toBeLessThan(0.0033);
  });

  test("very many become normal", () => {
    const many = new Array(400).fill(0.05);
    for (const z of [-2.5, -1, 0, 0.7, 2]) expect(chanceAtMost(z, many)).toBeCloseTo(normalCdf(z), 3);
  });

  test("is a chance, rises, and is even about zero, whatever the widths", () => {
    const widths = fc.array(fc.oneof(deviation, fc.constant(0)), { minLength: 0, maxLength: 8 });
    fc.assert(
      fc.property(widths, place, place, (all, a, b) => {
        const size = Math.hypot(...all, 1e-9);
        const [low, high] = [Math.min(a, b) * size, Math.max(a, b) * size];
        const chance = chanceAtMost(low, all);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(chanceAtMost(high, all) + 1e-9);
        if (all.some((one) => one > 0)) expect(chanceAtMost(-low, all)).toBeCloseTo(1 - chance, 7);
      }),
      { numRuns: 500 },
    );
  });

  test("without errors it is a step", () => {
    expect([chanceAtMost(-1e-12, []), chanceAtMost(0, []), chanceAtMost(1, [0, 0])]).toEqual([0, 1, 1]);
  });
});
