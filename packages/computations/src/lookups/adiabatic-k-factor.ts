import { CONDUCTOR_MATERIALS, CPC_ARRANGEMENTS, INSULATIONS, isExact, isKnownFact, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { liveConductorK, protectiveConductorK } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { protectiveMaterial } from "../circuits/protective-material.ts";
import { asksQuantity, asksWord } from "../need.ts";

/** Factor k in A√s/mm². */
export const adiabaticKFactor = calculation({
  id: "adiabatic-k-factor",
  title: "Factor k of a conductor",
  formula: "Tables 43.1 and 54.2 to 54.5",
  regulations: ["434.5.2", "543.1.3"],
  needs: {
    material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
    insulation: asksWord(MATTER.insulation, INSULATIONS),
    cpcArrangement: asksWord(MATTER.cpcArrangement, CPC_ARRANGEMENTS, "leave out for a live conductor"),
    area: asksQuantity(TERM.area, "1.5 mm²"),
  },
  compute({ material, insulation, cpcArrangement, area }, reckon) {
    const of = protectiveMaterial(cpcArrangement, material);
    const known = isKnownFact(insulation) && isExact(area);
    if (!isKnownFact(cpcArrangement)) {
      const live =
        known && isKnownFact(material) ? liveConductorK(material.word, insulation.word, area.value) : undefined;
      return { results: [reckon.lookedUp(TERM.adiabaticK, live, material, insulation, area)], remarks: [] };
    }
    const figure =
      known && of !== undefined
        ? protectiveConductorK(of, insulation.word, cpcArrangement.word, area.value)
        : undefined;
    return {
      results: [reckon.lookedUp(TERM.adiabaticK, figure, material, insulation, cpcArrangement, area)],
      remarks: [],
    };
  },
  examples: [
    {
      name: "copper core in a cable",
      given: { material: "copper", insulation: "70C-thermoplastic", cpcArrangement: "in-cable", area: "1.5 mm²" },
      values: { "adiabatic-k": { value: 115, within: 0 } },
      source: "BS 7671 Table 54.3",
    },
    {
      name: "separate copper",
      given: { material: "copper", insulation: "70C-thermoplastic", cpcArrangement: "separate", area: "16 mm²" },
      values: { "adiabatic-k": { value: 143, within: 0 } },
      source: "BS 7671 Table 54.2",
    },
    {
      name: "steel armour",
      given: { material: "copper", insulation: "90C-thermosetting", cpcArrangement: "armour", area: "25 mm²" },
      values: { "adiabatic-k": { value: 46, within: 0 } },
      source: "BS 7671 Table 54.4",
    },
  ],
});
