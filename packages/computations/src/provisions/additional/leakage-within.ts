import { type Remark, TERM } from "@good-grounds/core";
import { standingLeakagePart } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { ADDITIONAL } from "./matters.ts";

/**
 * Standing protective conductor current behind an RCD against 30 % of its rated residual operating current (531.3.2),
 * both in A. Too much does not take protection away: it makes the RCD trip without a fault, and people get round that.
 */
export const leakageWithin = assessor({
  id: "leakage-within",
  provision: "additional-protection",
  title: "Standing leakage leaves the RCD room",
  formula: "IPE ≤ 0.3·IΔn",
  regulations: ["531.3.2"],
  needs: {
    leakage: asksQuantity(TERM.standingLeakage, "5 mA"),
    residual: asksQuantity(TERM.residualOperatingCurrent, "30 mA"),
  },
  conclude({ leakage, residual }, reckon) {
    const limit = reckon.product(TERM.permittedLeakage, standingLeakagePart, residual);
    const judgement = reckon.atMost(ADDITIONAL.leakage, leakage, limit);
    return concluded(judgement, [], judgement.verdict === "not-met" ? [UNWANTED] : []);
  },
  examples: [
    {
      name: "at the limit",
      given: { leakage: "9 ± 0 mA", residual: "30 mA" },
      verdict: "met",
      values: { "permitted-leakage": { value: 0.009, within: 1e-12 } },
      source: "0.3 × 30 mA = 9 mA",
    },
    {
      name: "above",
      given: { leakage: "11 ± 1 mA", residual: "30 mA" },
      verdict: "not-met",
      source: "0.3 × 30 mA = 9 mA",
    },
    {
      name: "range across",
      given: { leakage: "8 mA to 10 mA", residual: "30 mA" },
      verdict: "too-near",
      source: "9 mA lies between",
    },
    {
      name: "not measured",
      given: { residual: "30 mA" },
      verdict: "not-known",
      missing: ["standing-leakage"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

const UNWANTED: Remark = Object.freeze({
  code: "unwanted-tripping",
  words: "Expect tripping without a fault. Divide the circuits among several RCDs or find the equipment that leaks.",
});
