import { notKnown, TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantities } from "../need.ts";

/**
 * Insulation resistance of circuits measured together: they lie in parallel, 1 ÷ Σ(1/R), in Ω. One low circuit hides
 * behind no other, and many good ones together can read low.
 */
export const combinedInsulation = calculation({
  id: "combined-insulation",
  title: "Insulation resistance of circuits measured together",
  formula: "R = 1 ÷ Σ(1/Ri)",
  regulations: ["643.3.2"],
  needs: { circuits: asksQuantities(TERM.insulation, "100 MΩ, one for each circuit") },
  compute({ circuits }, reckon) {
    if (circuits.length === 0) return { results: [notKnown(TERM.combinedInsulation, ["circuits"])], remarks: [] };
    return { results: [reckon.inParallel(TERM.combinedInsulation, circuits)], remarks: [] };
  },
  examples: [
    {
      name: "five circuits, one lower",
      given: { circuits: ["100 MΩ", "50 MΩ", "200 MΩ", "20 MΩ", "299 MΩ"] },
      values: { "combined-insulation": { value: 11.3193e6, within: 50 } },
      source: "1 ÷ (1/100 + 1/50 + 1/200 + 1/20 + 1/299) = 11.3193",
    },
    {
      name: "each above 1 MΩ, together below",
      given: { circuits: ["3 MΩ", "4 MΩ", "4 MΩ", "6 MΩ", "5 MΩ"] },
      values: { "combined-insulation": { value: 1e6 / (1 / 3 + 1 / 4 + 1 / 4 + 1 / 6 + 1 / 5), within: 1e-3 } },
      source: "1 ÷ (1/3 + 1/4 + 1/4 + 1/6 + 1/5) = 0.8333",
    },
  ],
});
