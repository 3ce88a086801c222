import { GROUPINGS, INSULATIONS, isExact, isKnownFact, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { ambientFactor, groupingFactor, thermalInsulationFactor } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksQuantity, asksWord } from "../need.ts";

/** Rating factors for ambient temperature, grouping and thermal insulation. */
export const ratingFactors = calculation({
  id: "rating-factors",
  title: "Rating factors of a cable",
  formula: "Tables 4B1, 4C1 and 52.2",
  regulations: ["523"],
  needs: {
    insulation: asksWord(MATTER.insulation, INSULATIONS),
    ambient: asksQuantity(TERM.ambientTemperature, "35 °C"),
    grouping: asksWord(MATTER.grouping, GROUPINGS),
    circuits: asksQuantity(TERM.count, "4"),
    surrounded: asksQuantity(TERM.length, "0.2 m surrounded by thermal insulation"),
  },
  compute({ insulation, ambient, grouping, circuits, surrounded }, reckon) {
    const ca = isKnownFact(insulation) && isExact(ambient) ? ambientFactor(insulation.word, ambient.value) : undefined;
    const cg = isKnownFact(grouping) && isExact(circuits) ? groupingFactor(grouping.word, circuits.value) : undefined;
    const ci = isExact(surrounded) ? thermalInsulationFactor(surrounded.value * 1000) : undefined;
    return {
      results: [
        reckon.lookedUp(TERM.ambientFactor, ca, insulation, ambient),
        reckon.lookedUp(TERM.groupingFactor, cg, grouping, circuits),
        reckon.lookedUp(TERM.insulationFactor, ci, surrounded),
      ],
      remarks: [],
    };
  },
  examples: [
    {
      name: "35 °C, four bunched circuits",
      given: {
        insulation: "70C-thermoplastic",
        ambient: "35 °C",
        grouping: "bunched",
        circuits: "4",
        surrounded: "0.5 m",
      },
      values: {
        "ambient-factor": { value: 0.94, within: 0 },
        "grouping-factor": { value: 0.65, within: 0 },
        "insulation-factor": { value: 0.5, within: 0.02 },
      },
      source: "BS 7671 Tables 4B1, 4C1 and 52.2",
    },
    {
      name: "eight bunched circuits at 50 °C",
      given: { insulation: "70C-thermoplastic", ambient: "50 °C", grouping: "bunched", circuits: "8" },
      values: { "ambient-factor": { value: 0.71, within: 0 }, "grouping-factor": { value: 0.52, within: 0 } },
      source: "BS 7671 Tables 4B1 and 4C1",
    },
  ],
});
