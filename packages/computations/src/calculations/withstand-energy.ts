import { TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/** Energy a conductor withstands, (k·S)² in A²s. k in A√s/mm², S in mm². */
export const withstandEnergy = calculation({
  id: "withstand-energy",
  title: "Energy a conductor withstands",
  formula: "k²S²",
  regulations: ["434.5.2", "543.1.3"],
  needs: { k: asksQuantity(TERM.adiabaticK, "115 k"), area: asksQuantity(TERM.area, "1.5 mm²") },
  compute: ({ k, area }, reckon) => ({
    results: [reckon.square(TERM.letThrough, reckon.product(TERM.withstand, k, area))],
    remarks: [],
  }),
  examples: [
    {
      name: "1.0 mm²",
      given: { k: "115 k", area: "1 mm²" },
      values: { "let-through": { value: 13225, within: 1e-6 } },
      source: "115² × 1² = 13,225",
    },
    {
      name: "2.5 mm²",
      given: { k: "115 k", area: "2.5 mm²" },
      values: { "let-through": { value: 82656.25, within: 1e-6 } },
      source: "115² × 2.5² = 82,656",
    },
  ],
});
