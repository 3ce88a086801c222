import { TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/** Zs expected from the loop before the circuit and R1+R2, and how far a measured Zs lies from it. All in Ω. */
export const expectedZs = calculation({
  id: "expected-zs",
  title: "Zs expected from Ze and R1+R2",
  formula: "Zs = Ze + (R1+R2)",
  regulations: ["643.7.3"],
  needs: {
    ze: asksQuantity(TERM.measuredZe, "0.35 Ω"),
    r1r2: asksQuantity(TERM.measuredR1R2, "0.62 Ω"),
    zs: asksQuantity(TERM.measuredZs, "0.58 Ω"),
  },
  compute({ ze, r1r2, zs }, reckon) {
    const expected = reckon.sum(TERM.expectedZs, ze, r1r2);
    return { results: [expected, reckon.difference(TERM.resistanceDifference, zs, expected)], remarks: [] };
  },
  examples: [
    {
      name: "a parallel path or a misread value",
      given: { ze: "0.35 Ω", r1r2: "0.62 Ω", zs: "0.58 Ω" },
      values: { "expected-zs": { value: 0.97, within: 1e-9 }, "resistance-difference": { value: -0.39, within: 1e-9 } },
      source: "0.35 + 0.62 = 0.97; 0.58 − 0.97 = −0.39",
    },
    {
      name: "no reading",
      given: { ze: "0.35 Ω", r1r2: "0.62 Ω" },
      values: { "expected-zs": { value: 0.97, within: 1e-9 } },
      missing: ["measured-zs"],
      source: "input missing",
    },
  ],
});
