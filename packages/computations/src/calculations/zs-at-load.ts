import { type Evidence, isKnown, type Reckoner, TERM } from "@good-grounds/core";
import { temperatureFactor } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { temperatureUnderLoad } from "../circuits/load-temperature.ts";
import { asksQuantity } from "../need.ts";

/**
 * Zs with the circuit's conductors at the temperature their load brings: Ze + (R1+R2)20·(1 + 0.004(θ − 20)). Impedances in
 * Ω, currents in A, temperatures in °C.
 */
export const zsAtLoad = calculation({
  id: "zs-at-load",
  title: "Zs at the temperature the load brings",
  formula: "Zs = Ze + (R1+R2)20·(1 + 0.004(θ − 20))",
  regulations: ["Appendix 3", "Appendix 4, 6.1"],
  needs: {
    ze: asksQuantity(TERM.measuredZe, "0.35 Ω"),
    r1r2: asksQuantity(TERM.r1r2At20, "0.9 Ω"),
    designCurrent: asksQuantity(TERM.designCurrent, "16 A"),
    tabulated: asksQuantity(TERM.tabulatedCapacity, "27 A"),
    ambient: asksQuantity(TERM.ambientTemperature, "30 °C"),
    operating: asksQuantity(TERM.operatingTemperature, "70 °C"),
  },
  compute(given, reckon) {
    const temperature = temperatureUnderLoad(given, reckon);
    const hot = reckon.product(TERM.operatingR1R2, given.r1r2, factorAt(temperature, reckon));
    return { results: [temperature, reckon.sum(TERM.operatingZs, given.ze, hot)], remarks: [] };
  },
  examples: [
    {
      name: "16 A on 27 A",
      given: {
        ze: "0.35 Ω",
        r1r2: "0.9 Ω",
        designCurrent: "16 A",
        tabulated: "27 A",
        ambient: "30 °C",
        operating: "70 °C",
      },
      values: {
        "load-temperature": { value: 44.0466, within: 1e-3 },
        "operating-zs": { value: 1.33657, within: 1e-4 },
      },
      source: "30 + 40 × (16 ÷ 27)² = 44.05 °C; 0.35 + 0.9 × 1.0962",
    },
    {
      name: "load not known",
      given: { ze: "0.35 Ω", r1r2: "0.9 Ω", tabulated: "27 A", ambient: "30 °C", operating: "70 °C" },
      missing: ["design-current"],
      source: "input missing",
    },
  ],
});

function factorAt(temperature: Evidence<"celsius">, reckon: Reckoner): Evidence<"ratio"> {
  if (!isKnown(temperature)) return reckon.lookedUp(TERM.testFactor, undefined, temperature);
  const ends = [temperature.low, temperature.value, temperature.high].map((celsius) => temperatureFactor(celsius));
  const [low, value, high] = ends;
  if (low === undefined || value === undefined || high === undefined)
    return reckon.lookedUp(TERM.testFactor, undefined, temperature);
  return low === high
    ? reckon.lookedUp(TERM.testFactor, value, temperature)
    : reckon.between(TERM.testFactor, low, high);
}
