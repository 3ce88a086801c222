import { EARTHING_SYSTEMS, isKnownFact, type Remark, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { typicalZe } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { keptByDistributor } from "../circuits/kept-by-distributor.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord } from "../need.ts";

/**
 * External loop impedance against what distributors usually declare as the greatest for the system: 0.35 Ω for
 * TN-C-S, 0.8 Ω for TN-S. It is no limit of the standard; a higher value deserves a question to the distributor. A reading
 * within is expected to be; what the installation needs of its loop is judged where it needs it.
 */
export const externalImpedance = check({
  id: "external-impedance",
  scope: "supply",
  title: "External loop impedance as usual for the system",
  formula: "Ze ≤ usual greatest Ze",
  regulations: ["313.1"],
  needs: {
    system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
    ze: asksQuantity(TERM.measuredZe, "0.21 Ω"),
  },
  gather({ supply }) {
    const { earthing } = supply;
    if (isKnownFact(earthing) && earthing.word === "TT")
      return doesNotArise("TT: the electrode is judged instead", earthing);
    return { system: earthing, ze: supply.ze };
  },
  conclude({ system, ze }, reckon) {
    const figure = isKnownFact(system) ? typicalZe(system.word) : undefined;
    const usual = reckon.lookedUp(TERM.measuredZe, figure, system);
    const judgement = keptByDistributor(QUESTION.loopUsual, ze, "atMost", usual, reckon);
    return concluded(judgement, [], judgement.verdict === "not-met" ? [ASK] : []);
  },
  examples: [
    { name: "TN-C-S", given: { system: "TN-C-S", ze: "0.21 Ω" }, verdict: "met", source: "usual declared 0.35 Ω" },
    {
      name: "TN-S at the usual value",
      given: { system: "TN-S", ze: "0.80 ± 0 Ω" },
      verdict: "met",
      source: "usual declared 0.8 Ω",
    },
    {
      name: "within, and the meter's doubt reaches past the usual value: expected",
      given: { system: "TN-C-S", ze: "0.30 Ω ±(5 % + 4 digits)" },
      verdict: "met",
      source: "0.30 ± 0.055 Ω, and the contact, against 0.35 Ω; within as read",
    },
    {
      name: "beyond by less than the meter's doubt",
      given: { system: "TN-C-S", ze: "0.37 Ω ±(5 % + 4 digits)" },
      verdict: "too-near",
      source: "0.37 ± 0.06 Ω",
    },
    {
      name: "TN-C-S too high",
      given: { system: "TN-C-S", ze: "0.62 Ω" },
      verdict: "not-met",
      source: "usual declared 0.35 Ω",
    },
    {
      name: "system not known",
      given: { ze: "0.3 Ω" },
      verdict: "not-known",
      missing: ["earthing-system"],
      source: "input missing",
    },
  ],
});

const ASK: Remark = Object.freeze({
  code: "ze-unusual",
  words:
    "Higher than distributors usually declare for this system: confirm the system earthing and ask the distributor.",
});
