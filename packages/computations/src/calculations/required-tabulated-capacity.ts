import { isKnown, TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/** Tabulated capacity a cable needs, In ÷ (Ca·Cg·Ci·Cf) in A. A factor that is left out is taken as not applying. */
export const requiredTabulatedCapacity = calculation({
  id: "required-tabulated-capacity",
  title: "Tabulated capacity a cable needs",
  formula: "It ≥ In ÷ (Ca·Cg·Ci·Cf)",
  regulations: ["433.1.1", "523"],
  needs: {
    rated: asksQuantity(TERM.ratedCurrent, "32 A"),
    ambient: asksQuantity(TERM.ambientFactor, "0.94"),
    grouping: asksQuantity(TERM.groupingFactor, "0.65"),
    insulation: asksQuantity(TERM.insulationFactor, "1"),
    fuse: asksQuantity(TERM.fuseFactor, "0.725 for a semi-enclosed fuse"),
  },
  compute({ rated, ambient, grouping, insulation, fuse }, reckon) {
    const factors = [ambient, grouping, insulation, fuse].filter(isKnown);
    let capacity = reckon.same(TERM.requiredCapacity, rated);
    for (const factor of factors) capacity = reckon.quotient(TERM.requiredCapacity, capacity, factor);
    return { results: [capacity], remarks: [] };
  },
  examples: [
    {
      name: "grouped and warm",
      given: { rated: "32 A", ambient: "0.94", grouping: "0.65", insulation: "1" },
      values: { "required-capacity": { value: 52.3732, within: 1e-3 } },
      source: "32 ÷ (0.94 × 0.65)",
    },
    {
      name: "semi-enclosed fuse",
      given: { rated: "30 A", fuse: "0.725" },
      values: { "required-capacity": { value: 41.3793, within: 1e-3 } },
      source: "30 ÷ 0.725",
    },
  ],
});
