import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawn, outside, overlap } from "../../../../outside/reports/drawn.ts";
import { changeStep, trendSparkline } from "./then-and-now.ts";

const day = fc
  .integer({ min: 0, max: 20_000 })
  .map((days) => new Date(Date.UTC(2000, 0, 1 + days)).toISOString().slice(0, 10));
const ohms = fc.oneof(fc.double({ min: 0, max: 1e12, noNaN: true }), fc.constant(Number.POSITIVE_INFINITY));
const words = fc.string({ unit: "binary", maxLength: 60 });

function faults(svg: string): readonly string[] {
  const picture = drawn(svg);
  const labels = picture.shapes.filter(({ name }) => name === "text");
  return [
    ...outside(picture).map(({ name }) => `${name} leaves the frame`),
    ...labels.flatMap((one, i) =>
      labels.slice(i + 1).flatMap((other) => (overlap(one.box, other.box) ? ["labels meet"] : [])),
    ),
  ];
}

describe("drawings of then and now stay in their frame", () => {
  test("trends of any readings, bands and limits", () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ on: day, value: ohms, text: words, bound: fc.constantFrom("exact", "above", "below") }), {
          maxLength: 6,
        }),
        fc.array(fc.record({ on: day, value: ohms, low: ohms, high: ohms }), { maxLength: 6 }),
        fc.option(ohms),
        fc.constantFrom("falling", "rising"),
        words,
        (points, projected, limit, worse, says) => {
          expect(faults(trendSparkline({ points, projected, limit, worse, words: says }))).toEqual([]);
        },
      ),
    );
  });

  test("changes of any size", () => {
    const number = fc.double();
    fc.assert(
      fc.property(
        number,
        number,
        fc.constantFrom("within", "up", "down", "cannot-say"),
        words,
        (amount, standard, change, says) => {
          expect(faults(changeStep({ amount, standard, change, words: says }))).toEqual([]);
        },
      ),
    );
  });
});
