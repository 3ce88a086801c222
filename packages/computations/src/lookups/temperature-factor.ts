import { assumed, isExact, TERM } from "@good-grounds/core";
import { temperatureFactor } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/** Temperature factor of resistance, from and to 20 °C. */
export const temperatureFactorOf = calculation({
  id: "temperature-factor",
  title: "Resistance at a temperature over that at 20 °C",
  formula: "1 + 0.004(θ − 20), and its inverse",
  regulations: ["Appendix 3"],
  needs: {
    temperature: asksQuantity(TERM.testTemperature, "5 °C"),
  },
  compute({ temperature }, reckon) {
    const factor = reckon.lookedUp(
      TERM.testFactor,
      isExact(temperature) ? temperatureFactor(temperature.value) : undefined,
      temperature,
    );
    return { results: [factor, reckon.quotient(TERM.factorTo20, ONE, factor)], remarks: [] };
  },
  examples: [
    {
      name: "5 °C",
      given: { temperature: "5 °C" },
      values: { "test-factor": { value: 0.94, within: 0.005 } },
      source: "1 + 0.004 × (5 − 20)",
    },
    {
      name: "25 °C back to 20 °C",
      given: { temperature: "25 °C" },
      values: { "factor-to-20": { value: 0.98, within: 0.006 } },
      source: "handbook value of the factor at 25 °C, seen on a page reproducing it",
    },
    {
      name: "70 °C back to 20 °C",
      given: { temperature: "70 °C" },
      values: { "factor-to-20": { value: 0.833, within: 0.0005 } },
      source: "IEC 60228 correction factors",
    },
  ],
});

const ONE = assumed(TERM.ratio, 1, "at 20 °C");
