import { TERM } from "@good-grounds/core";
import { concluded } from "../../check.ts";
import { asksQuantity, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants } from "../verdicts.ts";
import { THERMAL } from "./matters.ts";

/**
 * Whether a recessed luminaire can shed its heat (421.1.2, 559.4.1): not covered by thermal insulation unless marked as
 * one that may be, as far from material that burns as its maker asks, its lamp as it allows. Distances in m. The cable
 * beside it under insulation is a matter of its capacity: see `cable-capacity`.
 */
export const recessedLuminaire = assessor({
  id: "recessed-luminaire",
  provision: "thermal-protection",
  title: "Recessed luminaire can shed its heat",
  formula: "uncovered or made to be covered; a ≥ a,min; lamp as allowed",
  regulations: ["421.1.2", "559.4.1"],
  needs: {
    coveredBy: asksYesNo(THERMAL.coveredBy),
    coverAllowed: asksYesNo(THERMAL.coverAllowed),
    burnsNear: asksYesNo(THERMAL.burnsNear),
    clearance: asksQuantity(TERM.clearance, "60 mm; asked where such material lies near"),
    needed: asksQuantity(TERM.neededClearance, "50 mm, from the maker's instructions"),
    lampAsRated: asksYesNo(THERMAL.lampAsRated),
  },
  conclude({ coveredBy, coverAllowed, burnsNear, clearance, needed, lampAsRated }, reckon) {
    return concluded(
      reckon.all(
        THERMAL.luminaire,
        reckon.any(
          THERMAL.covering,
          wants(reckon, THERMAL.uncovered, coveredBy, false),
          wants(reckon, THERMAL.coverAllowed, coverAllowed),
        ),
        reckon.any(
          THERMAL.apart,
          wants(reckon, THERMAL.nothingNear, burnsNear, false),
          reckon.atLeast(THERMAL.distance, clearance, needed),
        ),
        wants(reckon, THERMAL.lampAsRated, lampAsRated),
      ),
    );
  },
  examples: [
    {
      name: "free in the void",
      given: { coveredBy: "no", burnsNear: "yes", clearance: "60 mm", needed: "50 mm", lampAsRated: "yes" },
      verdict: "met",
      source: "60 mm is more than 50 mm",
    },
    {
      name: "under loft insulation, not made for it",
      given: { coveredBy: "yes", coverAllowed: "no", burnsNear: "no", lampAsRated: "yes" },
      verdict: "not-met",
      source: "BS 7671 421.1.2, 559.4.1",
    },
    {
      name: "under insulation, marking not seen",
      given: { coveredBy: "yes", burnsNear: "no", lampAsRated: "yes" },
      verdict: "not-known",
      missing: ["cover-allowed"],
      source: "an input that is missing leaves the judgement open",
    },
    {
      name: "lamp too strong",
      given: { coveredBy: "no", burnsNear: "no", lampAsRated: "no" },
      verdict: "not-met",
      source: "BS 7671 559.4.1",
    },
  ],
});
