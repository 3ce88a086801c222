import { TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/**
 * Least size of a conductor by the adiabatic equation, S = √(I²t)/k in mm². I in A, t in s, k in A√s/mm². Valid for times
 * from 0.1 s to 5 s; below that the device's let-through energy takes the place of I²t.
 */
export const adiabaticSize = calculation({
  id: "adiabatic-size",
  title: "Least conductor size by the adiabatic equation",
  formula: "S = √(I²t) ÷ k",
  regulations: ["543.1.3", "434.5.2"],
  needs: {
    faultCurrent: asksQuantity(TERM.faultCurrent, "328 A"),
    time: asksQuantity(TERM.operatingTime, "0.4 s"),
    k: asksQuantity(TERM.adiabaticK, '115 "A√s/mm²", or 115 k'),
  },
  compute({ faultCurrent, time, k }, reckon) {
    const energy = reckon.letThrough(TERM.letThrough, faultCurrent, time);
    const size = reckon.quotient(TERM.requiredArea, reckon.root(TERM.rootLetThrough, energy), k);
    return { results: [size], remarks: time.value < 0.1 ? [BELOW] : [] };
  },
  examples: [
    {
      name: "90 A for 0.4 s",
      given: { faultCurrent: "90 A", time: "0.4 s", k: "115 k" },
      values: { "required-area": { value: 0.49, within: 0.01 } },
      source: "textbook example: 90 A for 0.4 s, k 115",
    },
    {
      name: "328 A for 0.4 s",
      given: { faultCurrent: "328 A", time: "0.4 s", k: "115 k" },
      values: { "required-area": { value: 1.8, within: 0.01 } },
      source: "trade discussion of the least size of cpc",
    },
    {
      name: "time missing",
      given: { faultCurrent: "90 A", k: "115 k" },
      missing: ["operating-time"],
      source: "input missing",
    },
  ],
});

const BELOW = Object.freeze({
  code: "below-tenth-second",
  words: "Below 0.1 s the formula does not hold: use the device's let-through energy.",
});
