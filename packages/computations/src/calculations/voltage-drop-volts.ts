import { TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/** Voltage drop from the tabulated figure: mV/A/m × L × Ib, in V. L in m, Ib in A. */
export const voltageDropVolts = calculation({
  id: "voltage-drop-volts",
  title: "Voltage drop from the tabulated figure",
  formula: "ΔU = mV/A/m · L · Ib",
  regulations: ["Appendix 4, 6.4"],
  needs: {
    perAmpereMetre: asksQuantity(TERM.dropPerAmpereMetre, "29 mV/A/m"),
    length: asksQuantity(TERM.length, "40 m"),
    designCurrent: asksQuantity(TERM.designCurrent, "4 A"),
  },
  compute: ({ perAmpereMetre, length, designCurrent }, reckon) => ({
    results: [
      reckon.product(TERM.voltageDrop, reckon.product(TERM.dropPerAmpere, perAmpereMetre, length), designCurrent),
    ],
    remarks: [],
  }),
  examples: [
    {
      name: "lighting",
      given: { perAmpereMetre: "29 mV/A/m", length: "40 m", designCurrent: "4 A" },
      values: { "voltage-drop": { value: 4.64, within: 1e-9 } },
      source: "29 × 40 × 4 ÷ 1000",
    },
  ],
});
