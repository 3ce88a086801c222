import { type Remark, TERM } from "@good-grounds/core";
import { voltageBetweenParts } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { FAULT } from "./matters.ts";

/**
 * Supplementary bonding does its work (415.2.2): resistance between exposed and extraneous parts that can be touched
 * together, in Ω, at most 50 V ÷ Ia. Ia in A is IΔn where an RCD disconnects, else the current that operates the
 * overcurrent device within 5 s (computation `operating-current`); of several circuits, the greatest.
 */
export const supplementaryBonding = assessor({
  id: "supplementary-bonding",
  provision: "fault-protection",
  title: "Parts that can be touched together are bonded",
  formula: "R ≤ 50 V/Ia",
  regulations: ["415.2.2"],
  needs: {
    betweenParts: asksQuantity(TERM.betweenParts, "0.05 Ω, the highest of all pairs"),
    operates: asksQuantity(TERM.operatingCurrent, "30 mA with an RCD of 30 mA; 200 A with a B40: what opens it in 5 s"),
  },
  conclude({ betweenParts, operates }, reckon) {
    const limit = reckon.quotient(TERM.permittedBetweenParts, voltageBetweenParts, operates);
    const judgement = reckon.atMost(FAULT.partsJoined, betweenParts, limit);
    return concluded(judgement, [], judgement.verdict === "met" ? [STILL_A_BOND] : []);
  },
  examples: [
    {
      name: "shower on a B40, no RCD",
      given: { betweenParts: "0.05 Ω", operates: "200 A" },
      verdict: "met",
      values: { "permitted-between-parts": { value: 0.25, within: 1e-9 } },
      source: "50 V ÷ (5 × 40 A) = 0.25 Ω",
    },
    {
      name: "the same with a long thin bond",
      given: { betweenParts: "0.31 ± 0.03 Ω", operates: "200 A" },
      verdict: "not-met",
      source: "50 V ÷ (5 × 40 A) = 0.25 Ω",
    },
    {
      name: "a range across",
      given: { betweenParts: "0.2 Ω to 0.3 Ω", operates: "200 A" },
      verdict: "too-near",
      source: "0.25 Ω lies between",
    },
    {
      name: "30 mA RCD",
      given: { betweenParts: "1.2 kΩ", operates: "30 mA" },
      verdict: "met",
      values: { "permitted-between-parts": { value: 1666.667, within: 0.001 } },
      source: "50 V ÷ 30 mA = 1667 Ω",
    },
    {
      name: "not measured",
      given: { operates: "30 mA" },
      verdict: "not-known",
      missing: ["between-parts"],
      source: "input missing",
    },
    {
      name: "nobody knows what disconnects",
      given: { betweenParts: "0.05 Ω" },
      verdict: "not-known",
      missing: ["operating-current"],
      source: "input missing",
    },
  ],
});

const STILL_A_BOND: Remark = Object.freeze({
  code: "still-a-bond",
  words:
    "Sound copper between two parts of one room reads some hundredths of an ohm whatever the limit allows: far more than that is a bad joint or no bond.",
});
