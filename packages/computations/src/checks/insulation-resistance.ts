import { type Evidence, isKnown, type Remark, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { insulationWorthAsking, permittedInsulation } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord } from "../need.ts";

/**
 * Insulation resistance between live conductors, and between live conductors and earth, against the least value of
 * Table 64 (643.3.2). Readings in Ω; a display at the end of its range (">999 MΩ") counts as at least that value.
 */
export const insulationResistance = check({
  id: "insulation-resistance",
  scope: "circuit",
  title: "Insulation resistance",
  formula: "RIns ≥ RIns,min",
  regulations: ["643.3.2", "643.3.3"],
  needs: {
    liveLive: asksQuantity(TERM.insulation, "200 MΩ"),
    liveEarth: asksQuantity(TERM.insulation, "200 MΩ"),
    testVoltage: asksWord(MATTER.insulationVoltage, ["250 V", "500 V", "1000 V"]),
  },
  gather: ({ readings }) => ({
    liveLive: readings.insulationLiveLive,
    liveEarth: readings.insulationLiveEarth,
    testVoltage: readings.insulationVoltage,
  }),
  conclude({ liveLive, liveEarth, testVoltage }, reckon) {
    const least = permittedInsulation("up to 500 V");
    const judgement = reckon.all(
      QUESTION.insulationSound,
      reckon.atLeast(QUESTION.insulationLiveEarth, liveEarth, least),
      reckon.atLeast(QUESTION.insulationLiveLive, liveLive, least),
    );
    const remarks: Remark[] = [];
    if (judgement.verdict === "met" && (low(liveLive) || low(liveEarth))) remarks.push(LOW);
    if (testVoltage.kind === "fact" && testVoltage.word === "250 V") remarks.push(REDUCED);
    return concluded(judgement, [], remarks);
  },
  examples: [
    {
      name: "end of range counts as at least that",
      given: { liveLive: ">999 MΩ", liveEarth: "627 MΩ", testVoltage: "500 V" },
      verdict: "met",
      source: "BS 7671 Table 64: at least 1 MΩ at 500 V d.c.",
    },
    {
      name: "at the limit as typed",
      given: { liveLive: "1.00 ± 0 MΩ", liveEarth: "1 ± 0 MΩ" },
      verdict: "met",
      source: "BS 7671 Table 64: at least 1 MΩ; a value typed equal to its limit meets it",
    },
    {
      name: "below the limit on one side",
      given: { liveLive: "200 MΩ", liveEarth: "0.4 MΩ" },
      verdict: "not-met",
      source: "BS 7671 Table 64: at least 1 MΩ",
    },
    {
      name: "one side not tested",
      given: { liveEarth: "200 MΩ" },
      verdict: "not-known",
      missing: ["insulation-resistance"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

function low(reading: Evidence<"ohm">): boolean {
  return isKnown(reading) && reading.value < insulationWorthAsking.value;
}

const LOW: Remark = Object.freeze({
  code: "insulation-low",
  words: "Within the limit but low: find out why, and compare with the last report (common practice below 2 MΩ).",
});

const REDUCED: Remark = Object.freeze({
  code: "insulation-reduced-voltage",
  words: "Tested at 250 V because connected equipment could be affected; the least value stays the same.",
});
