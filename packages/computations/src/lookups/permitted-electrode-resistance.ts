import { TERM } from "@good-grounds/core";
import { permittedTouchVoltage } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/** Greatest resistance RA in Ω for a touch voltage of 50 V. */
export const permittedElectrodeResistance = calculation({
  id: "permitted-electrode-resistance",
  title: "Greatest electrode resistance behind an RCD",
  formula: "RA ≤ 50 V ÷ IΔn",
  regulations: ["411.5.3"],
  needs: {
    residual: asksQuantity(TERM.residualOperatingCurrent, "100 mA"),
  },
  compute({ residual }, reckon) {
    return { results: [reckon.quotient(TERM.permittedRa, permittedTouchVoltage, residual)], remarks: [] };
  },
  examples: [
    {
      name: "100 mA",
      given: { residual: "100 mA" },
      values: { "permitted-ra": { value: 500, within: 1 } },
      source: "BS 7671 Table 41.5",
    },
    {
      name: "500 mA",
      given: { residual: "500 mA" },
      values: { "permitted-ra": { value: 100, within: 1 } },
      source: "BS 7671 Table 41.5",
    },
    {
      name: "30 mA",
      given: { residual: "30 mA" },
      values: { "permitted-ra": { value: 1667, within: 1 } },
      source: "BS 7671 Table 41.5",
    },
  ],
});
