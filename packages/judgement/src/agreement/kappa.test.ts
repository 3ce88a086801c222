import { CLASSIFICATIONS, type Classification } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cohenKappa, type Weighting } from "./cohen-kappa.ts";
import { fleissKappa } from "./fleiss-kappa.ts";

const classification = fc.constantFrom(...CLASSIFICATIONS);
const pair = fc.tuple(classification, classification);
const pairs = fc.array(pair, { maxLength: 40 });
const WEIGHTINGS: readonly Weighting[] = ["unweighted", "linear", "quadratic"];
const weighting = fc.constantFrom(...WEIGHTINGS);

describe("Cohen's kappa", () => {
  test("is not defined without items, nor where only one classification occurs", () => {
    expect(cohenKappa([])).toEqual({ defined: false, because: "no-items", items: 0 });
    expect(cohenKappa([["C2", "C2"]])).toEqual({ defined: false, because: "one-category-only", items: 1 });
    const onlyFi = cohenKappa([["FI", "C1"]], "linear");
    expect(onlyFi).toEqual({ defined: false, because: "no-items", items: 0 });
  });

  test("is 0 where each judge knows one classification and they differ", () => {
    expect(cohenKappa([["C2", "C3"]])).toMatchObject({ defined: true, value: 0, observed: 0, expected: 0 });
  });

  test("is 1, without any spread, for full agreement on two classifications or more, and for nothing less", () => {
    fc.assert(
      fc.property(pairs, (choices) => {
        const kappa = cohenKappa(choices);
        if (!kappa.defined) return;
        const agree = choices.every(([a, b]) => a === b);
        expect(kappa.value === 1).toBe(agree);
        if (agree) expect(kappa).toMatchObject({ observed: 1, standardError: 0, low: 1, high: 1 });
      }),
    );
    expect(
      cohenKappa(["C1", "C2", "C3", "FI", "none"].map((c) => [c, c] as [Classification, Classification])),
    ).toMatchObject({
      value: 1,
      standardError: 0,
    });
  });

  test("is the same whichever judge comes first, and in whatever order the items come", () => {
    fc.assert(
      fc.property(pairs, weighting, (choices, weights) => {
        const swapped = choices.map(([a, b]) => [b, a] as const).reverse();
        const [one, other] = [cohenKappa(choices, weights), cohenKappa(swapped, weights)];
        if (!one.defined || !other.defined) {
          expect(one).toEqual(other);
          return;
        }
        expect(one.value).toBeCloseTo(other.value, 9);
        expect(one.standardError).toBeCloseTo(other.standardError, 9);
      }),
    );
  });

  test("lies between −1 and 1 inside its interval, and repeating every item leaves it while the interval narrows", () => {
    fc.assert(
      fc.property(pairs, weighting, (choices, weights) => {
        const one = cohenKappa(choices, weights);
        const twice = cohenKappa([...choices, ...choices], weights);
        if (!one.defined || !twice.defined) return;
        expect(one.value).toBeGreaterThanOrEqual(-1 - 1e-12);
        expect(one.value).toBeLessThanOrEqual(1);
        expect(one.low).toBeLessThanOrEqual(one.value + 1e-12);
        expect(one.high).toBeGreaterThanOrEqual(one.value - 1e-12);
        expect(twice.value).toBeCloseTo(one.value, 9);
        expect(twice.standardError).toBeCloseTo(one.standardError / Math.SQRT2, 9);
      }),
    );
  });

  test("with weights leaves out what either called FI, and counts a near miss less than a far one", () => {
    const agreed: [Classification, Classification][] = [
      ["C1", "C1"],
      ["C2", "C2"],
      ["C3", "C3"],
      ["none", "none"],
    ];
    const near = cohenKappa([...agreed, ["C2", "C3"], ["FI", "C1"]], "linear");
    const far = cohenKappa([...agreed, ["C1", "none"], ["C1", "FI"]], "linear");
    if (!near.defined || !far.defined) throw new Error("not defined");
    expect(near.items).toBe(5);
    expect(near.value).toBeGreaterThan(far.value);
    expect(cohenKappa([...agreed, ["C2", "C3"]], "quadratic")).not.toMatchObject({ value: near.value });
  });
});

describe("Fleiss' kappa", () => {
  const ratings = fc.array(fc.array(classification, { maxLength: 6 }), { maxLength: 15 });

  test("is not defined without an item rated twice, nor where only one classification occurs", () => {
    expect(fleissKappa([])).toEqual({ defined: false, because: "no-items", items: 0, ratedOnce: 0 });
    expect(fleissKappa([["C1"], []])).toEqual({ defined: false, because: "no-items", items: 0, ratedOnce: 1 });
    expect(fleissKappa([["C3", "C3"], ["C3"]])).toEqual({
      defined: false,
      because: "one-category-only",
      items: 1,
      ratedOnce: 1,
    });
  });

  test("is 1 exactly for full agreement, overall and for each classification chosen", () => {
    fc.assert(
      fc.property(ratings, (items) => {
        const kappa = fleissKappa(items);
        if (!kappa.defined) return;
        const agree = items.every((item) => new Set(item).size <= 1);
        expect(Math.abs(kappa.value - 1) < 1e-9).toBe(agree);
        for (const [one, alone] of Object.entries(kappa.byClassification)) {
          const chosen = items.some((item) => item.includes(one as Classification));
          expect(alone === null).toBe(!chosen);
          if (agree && alone !== null) expect(alone).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test("is the mean over classifications, weighted by their part in the disagreement that chance would bring", () => {
    fc.assert(
      fc.property(ratings, (items) => {
        const kappa = fleissKappa(items);
        const rated = items.filter(({ length }) => length > 0);
        if (!kappa.defined) return;
        let top = 0;
        let bottom = 0;
        for (const one of CLASSIFICATIONS) {
          const share =
            rated.reduce((s, item) => s + item.filter((c) => c === one).length / item.length, 0) / rated.length;
          const alone = kappa.byClassification[one];
          if (alone === null) continue;
          top += share * (1 - share) * alone;
          bottom += share * (1 - share);
        }
        expect(kappa.value).toBeCloseTo(top / bottom, 9);
      }),
    );
  });

  test("does not mind the order of items, nor of the ratings of one", () => {
    fc.assert(
      fc.property(ratings, (items) => {
        const [one, other] = [fleissKappa(items), fleissKappa(items.map((item) => [...item].reverse()).reverse())];
        expect(one.defined).toBe(other.defined);
        if (one.defined && other.defined) expect(one.value).toBeCloseTo(other.value, 9);
      }),
    );
  });
});
