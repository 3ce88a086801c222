import { CONDUCTOR_MATERIALS, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { perMetre, testFactor } from "@good-grounds/measurement";
import { calculation } from "../check.ts";
import { asksQuantity, asksWord } from "../need.ts";

/**
 * Greatest R1+R2 of a cable: (r1 + r2)·L at 20 °C, and at the test temperature. Sizes in mm², L in m; BS EN 60228 gives
 * the greatest resistance per metre, real conductors lie a few per cent below.
 */
export const expectedR1R2 = calculation({
  id: "expected-r1r2",
  title: "Expected R1+R2 of a cable",
  formula: "R1+R2 = (r1 + r2)·L·Ft",
  regulations: ["643.2.1"],
  needs: {
    line: asksQuantity(TERM.lineArea, "2.5 mm²"),
    cpc: asksQuantity(TERM.cpcArea, "1.5 mm²"),
    material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
    length: asksQuantity(TERM.length, "20 m"),
    temperature: asksQuantity(TERM.testTemperature, "15 °C"),
  },
  compute({ line, cpc, material, length, temperature }, reckon) {
    const both = reckon.sum(
      TERM.conductorPerMetre,
      perMetre(TERM.linePerMetre, line, material, reckon),
      perMetre(TERM.cpcPerMetre, cpc, material, reckon),
    );
    const at20 = reckon.product(TERM.r1r2At20, both, length);
    return { results: [at20, reckon.product(TERM.expectedR1R2, at20, testFactor(temperature))], remarks: [] };
  },
  examples: [
    {
      name: "1.5/1.0 mm², 35 m",
      given: { line: "1.5 mm²", cpc: "1 mm²", material: "copper", length: "35 m", temperature: "20 °C" },
      values: { "expected-r1r2": { value: 1.057, within: 0.0005 } },
      source: "BS EN 60228: 30.2 mΩ/m × 35 m",
    },
    {
      name: "4/1.5 mm², 25 m",
      given: { line: "4 mm²", cpc: "1.5 mm²", material: "copper", length: "25 m", temperature: "20 °C" },
      values: { "expected-r1r2": { value: 0.41775, within: 1e-9 } },
      source: "BS EN 60228: 16.71 mΩ/m × 25 m",
    },
    {
      name: "2.5/2.5 mm², 40 m",
      given: { line: "2.5 mm²", cpc: "2.5 mm²", material: "copper", length: "40 m", temperature: "20 °C" },
      values: { "expected-r1r2": { value: 0.5928, within: 1e-9 } },
      source: "BS EN 60228: 14.82 mΩ/m × 40 m",
    },
    {
      name: "length missing",
      given: { line: "2.5 mm²", cpc: "2.5 mm²", material: "copper" },
      missing: ["length"],
      source: "input missing",
    },
  ],
});
