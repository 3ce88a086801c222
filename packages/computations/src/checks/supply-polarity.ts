import { isKnownFact, type Verdict } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { check, concluded } from "../check.ts";
import { QUESTION } from "../matters.ts";
import { asksWord } from "../need.ts";

/** Polarity of the incoming supply, and the sequence of its phases where there are three (643.6, 643.9). */
export const supplyPolarity = check({
  id: "supply-polarity",
  scope: "supply",
  title: "Polarity and phase sequence of the supply",
  formula: "as recorded",
  regulations: ["643.6", "643.9"],
  needs: {
    polarity: asksWord(MATTER.polarity, ["correct", "incorrect"]),
    phases: asksWord(MATTER.phases, ["1", "3"]),
    phaseSequence: asksWord(MATTER.phaseSequence, ["correct", "incorrect"]),
  },
  gather: ({ supply }) => ({
    polarity: supply.polarity,
    phases: supply.phases,
    phaseSequence: supply.phaseSequence,
  }),
  conclude({ polarity, phases, phaseSequence }, reckon) {
    const right = (word: string): Verdict => (word === "correct" ? "met" : "not-met");
    const incoming = reckon.byWord(QUESTION.polarityCorrect, polarity, right);
    if (isKnownFact(phases) && phases.word === "1") return concluded(incoming);
    const sequence = isKnownFact(phases)
      ? reckon.byWord(QUESTION.phaseSequenceCorrect, phaseSequence, right)
      : reckon.settled(QUESTION.phaseSequenceCorrect, "not-known", "", phases);
    return concluded(reckon.all(QUESTION.polarityCorrect, incoming, sequence));
  },
  examples: [
    { name: "single-phase", given: { polarity: "correct", phases: "1" }, verdict: "met", source: "BS 7671 643.6" },
    {
      name: "three-phase, sequence not recorded",
      given: { polarity: "correct", phases: "3" },
      verdict: "not-known",
      missing: ["phase-sequence"],
      source: "BS 7671 643.9",
    },
    {
      name: "reversed",
      given: { polarity: "incorrect", phases: "3", phaseSequence: "correct" },
      verdict: "not-met",
      source: "BS 7671 643.6",
    },
  ],
});
