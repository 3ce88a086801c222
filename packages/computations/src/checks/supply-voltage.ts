import { isKnownFact, TERM } from "@good-grounds/core";
import { supplyVoltageLimits } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity } from "../need.ts";

/** Voltage of a 230 V public supply, line to neutral in V, between 216.2 V and 253.0 V. */
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
        reckon.atLeast(QUESTION.voltageNotLow, voltage, supplyVoltageLimits.least),
        reckon.atMost(QUESTION.voltageNotHigh, voltage, supplyVoltageLimits.greatest),
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
    { name: "too high", given: { voltage: "256 ± 2 V" }, verdict: "not-met", source: "230 × 1.1 = 253.0" },
    { name: "too low", given: { voltage: "213 ± 2 V" }, verdict: "not-met", source: "230 × 0.94 = 216.2" },
    { name: "not measured", given: {}, verdict: "not-known", missing: ["measured-voltage"], source: "input missing" },
  ],
});
