import { isKnown, notKnown, published, type Remark, type Source, TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";
import { sampleFor } from "../sampling/index.ts";

const SOURCE: Source = Object.freeze({
  work: "hypergeometric distribution, exact one-sided bound",
  edition: "mathematics",
  basis: "derived",
  formula: "smallest n with Dmax(N, n, 0) at most D",
});

/** How many parts of a kind to open so that a clean sample leaves at most so many defective among all. Whole numbers. */
export const sampleSize = calculation({
  id: "sample-size",
  title: "How many accessories to open",
  formula: "smallest n with Dmax ≤ D when none of n is defective",
  regulations: ["651.2"],
  needs: {
    population: asksQuantity(TERM.population, "50"),
    accepted: asksQuantity(TERM.accepted, "5"),
    assurance: asksQuantity(TERM.assurance, "95 %"),
  },
  compute({ population, accepted, assurance }, reckon) {
    const by = [population, accepted, assurance] as const;
    const [N, D, level] = by.map((one) => (isKnown(one) && one.low === one.high ? one.value : Number.NaN)) as [
      number,
      number,
      number,
    ];
    if (Number.isNaN(N + D + level))
      return { results: [reckon.lookedUp(TERM.sampleSize, undefined, ...by)], remarks: [] };
    const whole = [N, D].every((count) => Number.isInteger(count) && count >= 0 && count <= 100_000);
    if (!whole || D > N || !(level > 0 && level < 1)) {
      const reason = "counts are whole numbers up to 100 000, accepted no more than present, assurance between 0 and 1";
      return { results: [notKnown(TERM.sampleSize, [], "not-tabulated", reason)], remarks: [] };
    }
    const size = published(TERM.sampleSize, sampleFor(N, D, level), SOURCE, "for these counts");
    return { results: [reckon.lookedUp(TERM.sampleSize, size, ...by)], remarks: [AT_RANDOM] };
  },
  examples: [
    {
      name: "at most 11 of 50",
      given: { population: "50", accepted: "11", assurance: "95 %" },
      values: { "sample-size": { value: 10, within: 0 } },
      source: "C(38,10) ÷ C(50,10) = 0.0460 ≤ 0.05 < C(38,9) ÷ C(50,9) = 0.0651",
    },
    {
      name: "none accepted",
      given: { population: "40", accepted: "0", assurance: "95 %" },
      values: { "sample-size": { value: 39, within: 1 } },
      source: "one bad part is missed by n of 40 with (40 − n)/40: 38 opened still miss it with 0.05",
    },
    {
      name: "assurance missing",
      given: { population: "40", accepted: "2" },
      missing: ["assurance"],
      source: "input missing",
    },
  ],
});

const AT_RANDOM: Remark = Object.freeze({
  code: "chosen-at-random",
  words:
    "So many are enough where they are chosen at random among all. Chosen because they are near or easy to reach, no number short of all of them bounds the others.",
});
