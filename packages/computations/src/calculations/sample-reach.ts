import {
  type Evidence,
  isKnown,
  notKnown,
  published,
  type Reckoner,
  type Source,
  TERM,
  type Term,
} from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";
import { chanceOfMissing, leastDefective, mostDefective, widened } from "../sampling/index.ts";

const SOURCE: Source = Object.freeze({
  work: "hypergeometric distribution, exact one-sided bounds",
  edition: "mathematics",
  basis: "derived",
  formula: "C(D,k)·C(N−D,n−k) ÷ C(N,n)",
});

/**
 * What a sample says of all parts of a kind: how many may be defective although so few turned up, the chance of missing
 * those that may be left, and how many more to open after a finding. Counts are whole numbers; assurance is a part of 1.
 */
export const sampleReach = calculation({
  id: "sample-reach",
  title: "What a sample of accessories says of all",
  formula: "Dmax: largest D with P(at most x found) > 1 − assurance",
  regulations: ["651.2"],
  needs: {
    population: asksQuantity(TERM.population, "50"),
    inspected: asksQuantity(TERM.inspected, "10"),
    defective: asksQuantity(TERM.defective, "0"),
    assurance: asksQuantity(TERM.assurance, "95 %"),
  },
  compute({ population, inspected, defective, assurance }, reckon) {
    const by = [population, inspected, defective, assurance] as const;
    const [N, n, x, level] = by.map((one) => (isKnown(one) && one.low === one.high ? one.value : Number.NaN)) as [
      number,
      number,
      number,
      number,
    ];
    const fault = faultOf(N, n, x, level);
    if (fault !== undefined) {
      const results = [TERM.leastDefective, TERM.mostDefective, TERM.moreToOpen].map((term) =>
        Number.isNaN(N + n + x + level)
          ? reckon.lookedUp(term, undefined, ...by)
          : notKnown(term, [], "not-tabulated", fault),
      );
      return {
        results,
        remarks: Number.isNaN(N + n + x + level)
          ? []
          : [{ code: "no-sample", words: `These counts are no sample: ${fault}.` }],
      };
    }
    const most = mostDefective(N, n, x, level);
    const shown = (term: Term<"ratio">, value: number): Evidence<"ratio"> => figure(reckon, term, value, by);
    const { more, all } = widened(N, n, x, mostDefective(N, n, 0, level), level);
    return {
      results: [
        shown(TERM.leastDefective, leastDefective(N, n, x, level)),
        shown(TERM.mostDefective, most),
        shown(TERM.chanceOfMissing, chanceOfMissing(N, Math.max(x, Math.ceil(N * 0.05)), n)),
        shown(TERM.moreToOpen, more),
      ],
      remarks: [
        {
          code: "chosen-at-random",
          words:
            "The bounds hold on one condition: those opened were chosen at random among all. Where they were chosen because they were near or easy to reach, there is no bound for the others: the sample speaks only of parts like those opened.",
        },
        {
          code: "missing-share",
          words: "The chance of missing is for a fault rate of 5 % of all parts, or those found where that is more.",
        },
        ...(x > 0
          ? [
              {
                code: "widen",
                words: all
                  ? "After what was found, opening all of them is the only sample that gives the same assurance as a clean one."
                  : "After what was found, so many more have to be opened without a further finding before the sample says as much as a clean one would.",
              },
            ]
          : []),
      ],
    };
  },
  examples: [
    {
      name: "10 of 50 clean",
      given: { population: "50", inspected: "10", defective: "0", assurance: "95 %" },
      values: { "most-defective": { value: 11, within: 0 }, "more-to-open": { value: 0, within: 0 } },
      source: "C(39,10) ÷ C(50,10) = 0.0619 > 0.05 ≥ C(38,10) ÷ C(50,10) = 0.0460",
    },
    {
      name: "60 of 300 clean",
      given: { population: "300", inspected: "60", defective: "0", assurance: "95 %" },
      values: { "most-defective": { value: 13, within: 0 } },
      source: "the same with binomial coefficients",
    },
    {
      name: "one found in 20 of 100",
      given: { population: "100", inspected: "20", defective: "1", assurance: "95 %" },
      values: { "chance-of-missing": { value: 0.319309, within: 1e-6 } },
      source: "C(95,20) ÷ C(100,20) = 0.319309",
    },
    {
      name: "more opened than there are",
      given: { population: "10", inspected: "12", defective: "0", assurance: "95 %" },
      missing: ["most-defective"],
      source: "no sample",
    },
    {
      name: "population not counted",
      given: { inspected: "10", defective: "0", assurance: "95 %" },
      missing: ["population"],
      source: "input missing",
    },
  ],
});

function faultOf(N: number, n: number, x: number, level: number): string | undefined {
  if (Number.isNaN(N + n + x + level)) return "something is missing";
  if (![N, n, x].every((count) => Number.isInteger(count) && count >= 0 && count <= 100_000))
    return "counts are whole numbers up to 100 000";
  if (n > N || x > n) return "more was opened than is present, or more found than opened";
  return level > 0 && level < 1 ? undefined : "assurance lies between 0 and 1";
}

function figure(
  reckon: Reckoner,
  term: Term<"ratio">,
  value: number,
  by: readonly Evidence<"ratio">[],
): Evidence<"ratio"> {
  return reckon.lookedUp(term, published(term, value, SOURCE, "for these counts"), ...by);
}
