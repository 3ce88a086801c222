import { TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { temperatureUnderLoad } from "../circuits/load-temperature.ts";
import { asksQuantity } from "../need.ts";

/** Conductor temperature under load, θ = θa + (θp − 30)·(Ib/It)² in °C. Currents in A, for a cable tabulated at 30 °C. */
export const conductorTemperature = calculation({
  id: "conductor-temperature",
  title: "Conductor temperature under load",
  formula: "θ = θa + (θp − 30)·(Ib/It)²",
  regulations: ["Appendix 4, 6.1"],
  needs: {
    designCurrent: asksQuantity(TERM.designCurrent, "20 A"),
    tabulated: asksQuantity(TERM.tabulatedCapacity, "27 A"),
    ambient: asksQuantity(TERM.ambientTemperature, "30 °C"),
    operating: asksQuantity(TERM.operatingTemperature, "70 °C"),
  },
  compute: (given, reckon) => ({ results: [temperatureUnderLoad(given, reckon)], remarks: [] }),
  examples: [
    {
      name: "20 A on 27 A",
      given: { designCurrent: "20 A", tabulated: "27 A", ambient: "30 °C", operating: "70 °C" },
      values: { "load-temperature": { value: 51.9479, within: 1e-3 } },
      source: "30 + 40 × (20 ÷ 27)²",
    },
    {
      name: "fully loaded",
      given: { designCurrent: "27 A", tabulated: "27 A", ambient: "30 °C", operating: "70 °C" },
      values: { "load-temperature": { value: 70, within: 1e-9 } },
      source: "30 + 40 × 1",
    },
  ],
});
