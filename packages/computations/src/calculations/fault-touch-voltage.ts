import { TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/**
 * Voltage in V of exposed metal to the main earthing terminal while an earth fault lasts: the fault current U0 ÷ Zs
 * through the protective conductor, If × R2. Within one zone of main bonding nobody can touch more of it than this; a
 * person with one hand on metal bonded nearer sees less. It says how hard a fault is on people until it is disconnected,
 * not whether it is disconnected in time. Zs and R2 in Ω, both at one temperature.
 */
export const faultTouchVoltage = calculation({
  id: "fault-touch-voltage",
  title: "Voltage of exposed metal during an earth fault",
  formula: "Uf = (U0/Zs)·R2",
  regulations: ["411.3.1.2", "411.3.2.1"],
  needs: {
    nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
    zs: asksQuantity(TERM.measuredZs, "1.05 Ω"),
    r2: asksQuantity(TERM.measuredR2, "0.45 Ω"),
  },
  compute({ nominalVoltage, zs, r2 }, reckon) {
    const current = reckon.quotient(TERM.earthFaultCurrent, nominalVoltage, zs);
    return { results: [reckon.product(TERM.faultTouchVoltage, current, r2), current], remarks: [] };
  },
  examples: [
    {
      name: "half of the loop is the protective conductor",
      given: { nominalVoltage: "230 V", zs: "1.00 Ω", r2: "0.50 Ω" },
      values: {
        "fault-touch-voltage": { value: 115, within: 1e-9 },
        "earth-fault-current": { value: 230, within: 1e-9 },
      },
      source: "230 V ÷ 1 Ω × 0.5 Ω",
    },
    {
      name: "a short circuit of equal conductors behind a low supply impedance",
      given: { nominalVoltage: "230 V", zs: "0.40 Ω", r2: "0.10 Ω" },
      values: { "fault-touch-voltage": { value: 57.5, within: 1e-9 } },
      source: "230 V ÷ 0.4 Ω × 0.1 Ω",
    },
    {
      name: "protective conductor not measured by itself",
      given: { nominalVoltage: "230 V", zs: "1.00 Ω" },
      missing: ["measured-r2"],
      source: "input missing",
    },
  ],
});
