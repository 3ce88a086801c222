import { CONDUCTOR_MATERIALS, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { CONDUCTOR_TOLERANCE, perMetre, testFactor } from "@good-grounds/measurement";
import { calculation } from "../check.ts";
import { asksQuantity, asksWord } from "../need.ts";

/**
 * The length a resistance stands for, R ÷ (r·Ft) in m: with the greatest resistance per metre of BS EN 60228, and with
 * that of real conductors, which makes it longer. R in Ω, size in mm².
 */
export const lengthFromResistance = calculation({
  id: "length-from-resistance",
  title: "Length that a conductor's resistance stands for",
  formula: "L = R ÷ (r·Ft)",
  regulations: [],
  needs: {
    resistance: asksQuantity(TERM.resistance, "0.52 Ω"),
    area: asksQuantity(TERM.area, "2.5 mm²"),
    material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
    temperature: asksQuantity(TERM.testTemperature, "20 °C"),
  },
  compute({ resistance, area, material, temperature }, reckon) {
    const cold = perMetre(TERM.conductorPerMetre, area, material, reckon);
    const atTest = reckon.product(TERM.conductorPerMetre, cold, testFactor(temperature));
    const real = reckon.product(TERM.conductorPerMetre, atTest, CONDUCTOR_TOLERANCE);
    return {
      results: [
        reckon.quotient(TERM.expectedLength, resistance, atTest),
        reckon.quotient(TERM.expectedLength, resistance, real),
      ],
      remarks: [],
    };
  },
  examples: [
    {
      name: "ring of 2.5 mm²",
      given: { resistance: "0.52 Ω", area: "2.5 mm²", material: "copper", temperature: "20 °C" },
      values: { "expected-length": { value: 0.52 / 0.00741, within: 1e-9 } },
      source: "BS EN 60228: 7.41 mΩ/m",
    },
    {
      name: "size not tabulated",
      given: { resistance: "0.52 Ω", area: "2.6 mm²", material: "copper", temperature: "20 °C" },
      missing: ["conductor-per-metre"],
      source: "2.6 mm² is no size of BS EN 60228",
    },
  ],
});
