import { MATTER } from "@good-grounds/inspection";
import { check, concluded } from "../check.ts";
import { QUESTION } from "../matters.ts";
import { asksWord } from "../need.ts";

/** Polarity of a circuit as recorded: switches and fuses in the line conductor only, accessories wired right (643.6). */
export const polarity = check({
  id: "polarity",
  scope: "circuit",
  title: "Polarity",
  formula: "as recorded",
  regulations: ["643.6"],
  needs: { polarity: asksWord(MATTER.polarity, ["correct", "incorrect"]) },
  gather: ({ readings }) => ({ polarity: readings.polarity }),
  conclude: ({ polarity: recorded }, reckon) =>
    concluded(reckon.byWord(QUESTION.polarityCorrect, recorded, (word) => (word === "correct" ? "met" : "not-met"))),
  examples: [
    { name: "correct", given: { polarity: "correct" }, verdict: "met", source: "BS 7671 643.6" },
    { name: "incorrect", given: { polarity: "incorrect" }, verdict: "not-met", source: "BS 7671 643.6" },
    { name: "not recorded", given: {}, verdict: "not-known", missing: ["polarity"], source: "nothing recorded" },
  ],
});
