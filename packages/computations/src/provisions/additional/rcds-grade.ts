import { RCD_DELAYS, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { rcdGradingRatio } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity, asksWord } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wantsOneOf } from "../verdicts.ts";
import { ADDITIONAL } from "./matters.ts";

/**
 * Selectivity of two RCDs in series (536.4.1.4): the one ahead is time-delayed (S), the one behind is not, and the rated
 * residual operating current ahead is at least three times that behind, both in A. A delay alone, or a ratio alone, does
 * not do: a fault to earth is many times either rating.
 */
export const rcdsGrade = assessor({
  id: "rcds-grade",
  provision: "additional-protection",
  title: "RCDs in series grade",
  formula: "S ahead, general behind, IΔn,1 ≥ 3·IΔn,2",
  regulations: ["536.4.1.4"],
  needs: {
    aheadDelay: asksWord(ADDITIONAL.aheadDelay, RCD_DELAYS),
    aheadResidual: asksQuantity(TERM.aheadResidual, "100 mA"),
    delay: asksWord(MATTER.rcdDelay, RCD_DELAYS),
    residual: asksQuantity(TERM.residualOperatingCurrent, "30 mA"),
  },
  conclude({ aheadDelay, aheadResidual, delay, residual }, reckon) {
    const least = reckon.product(TERM.leastAheadResidual, rcdGradingRatio, residual);
    return concluded(
      reckon.all(
        ADDITIONAL.grades,
        wantsOneOf(reckon, ADDITIONAL.aheadDelay, aheadDelay, ["S"]),
        wantsOneOf(reckon, MATTER.rcdDelay, delay, ["general"]),
        reckon.atLeast(ADDITIONAL.ratioGrades, aheadResidual, least),
      ),
    );
  },
  examples: [
    {
      name: "100 mA S ahead of 30 mA",
      given: { aheadDelay: "S", aheadResidual: "100 mA", delay: "general", residual: "30 mA" },
      verdict: "met",
      values: { "least-ahead-residual": { value: 0.09, within: 1e-12 } },
      source: "100 mA ≥ 3 × 30 mA, and delayed",
    },
    {
      name: "100 mA without delay ahead of 30 mA",
      given: { aheadDelay: "general", aheadResidual: "100 mA", delay: "general", residual: "30 mA" },
      verdict: "not-met",
      source: "a fault to earth is far above both ratings, and both are as fast",
    },
    {
      name: "delayed, but of the same rating",
      given: { aheadDelay: "S", aheadResidual: "30 mA", delay: "general", residual: "30 mA" },
      verdict: "not-met",
      source: "30 mA < 3 × 30 mA",
    },
    {
      name: "300 mA S ahead of 100 mA, at the ratio",
      given: { aheadDelay: "S", aheadResidual: "300 mA", delay: "general", residual: "100 mA" },
      verdict: "met",
      source: "300 mA = 3 × 100 mA",
    },
    {
      name: "mark of the one ahead not read",
      given: { aheadResidual: "100 mA", delay: "general", residual: "30 mA" },
      verdict: "not-known",
      missing: ["rcd-ahead-delay"],
      source: "an input that is missing leaves it open",
    },
  ],
});
