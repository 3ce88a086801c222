import { isKnownFact, TERM } from "@good-grounds/core";
import { supplyVoltageLimits } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { keptByDistributor } from "../circuits/kept-by-distributor.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity } from "../need.ts";

/**
 * Voltage of a 230 V public supply, line to neutral in V, between 216.2 V and 253.0 V. The distributor answers for it: a
 * reading within is expected to be, one beyond by less than the meter's doubt is too near to call.
 */
export const supplyVoltage = check({
  id: "supply-voltage",
  scope: "supply",
  title: "Supply voltage within the statutory limits",
  formula: "216.2 V ≤ U ≤ 253.0 V",
  regulations: ["313.1"],
  needs: { voltage: asksQuantity(TERM.measuredVoltage, "241 V") },
  gather({ supply }) {
    if (isKnownFact(supply.public) && !supply.public.word) return doesNotArise("not a public supply", supply.public);
    return { voltage: supply.voltage };
  },
  conclude: ({ voltage }, reckon) =>
    concluded(
      reckon.all(
        QUESTION.voltageWithin,
        keptByDistributor(QUESTION.voltageNotLow, voltage, "atLeast", supplyVoltageLimits.least, reckon),
        keptByDistributor(QUESTION.voltageNotHigh, voltage, "atMost", supplyVoltageLimits.greatest, reckon),
      ),
    ),
  examples: [
    {
      name: "usual",
      given: { voltage: "241 V" },
      verdict: "met",
      source: "ESQCR 2002 regulation 27: 230 V + 10 % − 6 %",
    },
    { name: "at the upper limit", given: { voltage: "253.0 ± 0 V" }, verdict: "met", source: "230 × 1.1 = 253.0" },
    {
      name: "within, and the meter's doubt reaches past the limit: expected",
      given: { voltage: "249 V ±(2 % + 2 digits)" },
      verdict: "met",
      source: "249 ± 7.0 V reaches 256 V; within 253.0 V as read, and the distributor keeps to it",
    },
    {
      name: "beyond by less than the meter's doubt",
      given: { voltage: "254 V ±(2 % + 2 digits)" },
      verdict: "too-near",
      source: "254 ± 7.1 V",
    },
    { name: "too high", given: { voltage: "256 ± 2 V" }, verdict: "not-met", source: "230 × 1.1 = 253.0" },
    { name: "too low", given: { voltage: "213 ± 2 V" }, verdict: "not-met", source: "230 × 0.94 = 216.2" },
    { name: "not measured", given: {}, verdict: "not-known", missing: ["measured-voltage"], source: "input missing" },
  ],
});
