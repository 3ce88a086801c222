import { assumed, TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/**
 * Prospective fault current from a line to neutral loop impedance: U0/Z line to neutral; √3 times that for a fault between
 * two lines and twice for a bolted three-phase fault, both exact when line and neutral impedances are equal. U0 in V, Z in
 * Ω, currents in A. The band follows from the band of Z.
 */
export const faultCurrent = calculation({
  id: "fault-current",
  title: "Prospective fault current from a loop impedance",
  formula: "I = U0 ÷ Z; line to line √3·I; three-phase 2·I",
  regulations: ["434.1", "643.7.3"],
  needs: {
    nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
    loop: asksQuantity(TERM.lineNeutralLoop, "0.12 Ω"),
  },
  compute({ nominalVoltage, loop }, reckon) {
    const single = reckon.quotient(TERM.faultCurrent, nominalVoltage, loop);
    return {
      results: [
        single,
        reckon.product(TERM.lineToLineFaultCurrent, single, ROOT_3),
        reckon.product(TERM.threePhaseFaultCurrent, single, TWO),
      ],
      remarks: [],
    };
  },
  examples: [
    {
      name: "0.12 Ω at 230 V",
      given: { nominalVoltage: "230 V", loop: "0.12 Ω" },
      values: {
        "fault-current": { value: 1916.67, within: 0.01 },
        "line-to-line-fault-current": { value: 3319.76, within: 0.01 },
        "three-phase-fault-current": { value: 3833.33, within: 0.01 },
      },
      source: "230 ÷ 0.12; × √3; × 2",
    },
    {
      name: "0.08 Ω at 240 V",
      given: { nominalVoltage: "240 V", loop: "0.08 Ω" },
      values: {
        "fault-current": { value: 3000, within: 1e-6 },
        "line-to-line-fault-current": { value: 5190, within: 10 },
      },
      source: "trade page on prospective short-circuit current: 240 ÷ 0.08, × 1.73",
    },
    {
      name: "a low reading is a wide band",
      given: { nominalVoltage: "230 V", loop: "0.02 Ω to 0.08 Ω" },
      values: { "fault-current": { value: 230 / 0.05, within: 1e-6 } },
      source: "0.05 Ω ± 0.03 Ω: 2.9 kA to 11.5 kA",
    },
  ],
});

const ROOT_3 = assumed(TERM.root3, Math.sqrt(3), "equal line and neutral impedances");
const TWO = assumed(TERM.two, 2, "equal line and neutral impedances");
