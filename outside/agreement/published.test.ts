import { CLASSIFICATIONS, type Classification, SEVERITIES } from "@good-grounds/core";
import { cohenKappa, fleissKappa } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";

/** Examples worked in publications. Their categories become ours in the order in which they stand. */
interface TwoJudges {
  readonly source: string;
  readonly table: readonly (readonly number[])[];
  readonly unweighted: number;
  readonly linear?: number;
  readonly observed?: number;
  readonly expected?: number;
  readonly digits: number;
}

const TWO: readonly TwoJudges[] = [
  {
    source: "Wikipedia, Cohen's kappa: fifty grant proposals, two readers",
    table: [
      [20, 5],
      [10, 15],
    ],
    unweighted: 0.4,
    observed: 0.7,
    expected: 0.5,
    digits: 4,
  },
  {
    source: "Fleiss, Statistical methods for rates and proportions, 2nd edition (1981), p. 213: a hundred patients",
    table: [
      [75, 1, 4],
      [5, 4, 1],
      [0, 0, 10],
    ],
    unweighted: 0.68,
    observed: 0.89,
    expected: 0.66,
    digits: 2,
  },
  {
    source: "Gwet, overview that goes with his functions of agreement (2019): two abstractors, a hundred pregnancies",
    table: [
      [13, 0, 0],
      [0, 20, 7],
      [0, 4, 56],
    ],
    unweighted: 0.7964094,
    digits: 6,
  },
  {
    source: "Boyd and others, J. Nat. Cancer Inst. 68 (1982), as worked in Altman, Practical statistics (1991), ch. 14",
    table: [
      [21, 12, 0, 0],
      [4, 17, 1, 0],
      [3, 9, 15, 2],
      [0, 0, 0, 1],
    ],
    unweighted: 0.47,
    linear: 0.57,
    digits: 2,
  },
];

describe("published examples of Cohen's kappa", () => {
  test.each(TWO)("$source", ({ table, unweighted, linear, observed, expected, digits }) => {
    const pairs = table.flatMap((row, i) =>
      row.flatMap((count, j) =>
        Array.from({ length: count }, () => [SEVERITIES[i], SEVERITIES[j]] as [Classification, Classification]),
      ),
    );
    const kappa = cohenKappa(pairs);
    const close = 0.5 * 10 ** -digits;
    if (!kappa.defined) throw new Error("not defined");
    expect(Math.abs(kappa.value - unweighted)).toBeLessThan(close);
    if (observed !== undefined) expect(Math.abs(kappa.observed - observed)).toBeLessThan(close);
    if (expected !== undefined) expect(Math.abs(kappa.expected - expected)).toBeLessThan(close);
    if (linear !== undefined) {
      const stepped = cohenKappa(pairs, "linear");
      if (!stepped.defined) throw new Error("not defined");
      expect(Math.abs(stepped.value - linear)).toBeLessThan(close);
    }
  });
});

/** Items by category from counts: a row an item, a column a category. */
function ratingsOf(table: readonly (readonly number[])[]): Classification[][] {
  return table.map((row) =>
    row.flatMap((count, j) => Array.from({ length: count }, () => CLASSIFICATIONS[j] as Classification)),
  );
}

describe("published examples of Fleiss' kappa", () => {
  test("Wikipedia, Fleiss' kappa: ten items, fourteen raters, five categories", () => {
    const kappa = fleissKappa(
      ratingsOf([
        [0, 0, 0, 0, 14],
        [0, 2, 6, 4, 2],
        [0, 0, 3, 5, 6],
        [0, 3, 9, 2, 0],
        [2, 2, 8, 1, 1],
        [7, 7, 0, 0, 0],
        [3, 2, 6, 3, 0],
        [2, 5, 3, 2, 2],
        [6, 5, 2, 1, 0],
        [0, 2, 2, 3, 7],
      ]),
    );
    if (!kappa.defined) throw new Error("not defined");
    expect(kappa.value).toBeCloseTo(0.21, 3);
    expect(kappa.observed).toBeCloseTo(0.378, 3);
    expect(kappa.expected).toBeCloseTo(0.213, 3);
  });

  test("Gwet, Handbook of Inter-Rater Reliability (2014): twelve items, four raters, some of whom did not rate", () => {
    const kappa = fleissKappa(
      ratingsOf([
        [3, 0, 0, 0, 0],
        [0, 3, 1, 0, 0],
        [0, 0, 4, 0, 0],
        [0, 0, 4, 0, 0],
        [0, 4, 0, 0, 0],
        [1, 1, 1, 1, 0],
        [0, 0, 0, 4, 0],
        [3, 1, 0, 0, 0],
        [0, 4, 0, 0, 0],
        [0, 0, 0, 0, 3],
        [2, 0, 0, 0, 0],
        [0, 0, 1, 0, 0],
      ]),
    );
    if (!kappa.defined) throw new Error("not defined");
    expect(kappa.observed).toBeCloseTo(0.81818, 5);
    expect(kappa.value).toBeCloseTo(0.76117, 5);
    expect(kappa).toMatchObject({ items: 11, ratedOnce: 1 });
  });
});
