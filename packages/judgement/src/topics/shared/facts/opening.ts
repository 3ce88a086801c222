import { ranked, yesNo } from "@good-grounds/core";

/** What gets in through the gaps of what stands around a live part, as it was found. */
export const OPENING_FACTS = Object.freeze({
  "gets-in": ranked({
    asks: "As found, what comes through the gaps of what is around it? (Work out or try with the circuit dead.)",
    effort: "glance",
    values: {
      nothing: "nothing that matters gets in",
      "finger-short": "a finger (12 mm, jointed) goes in and does not reach the live part",
      "wire-on-top": "a wire of 1 mm put in at the top reaches the live part, a finger does not",
      finger: "a finger (12 mm, jointed) reaches the live part",
      hand: "a hand or more goes in and reaches the live part, or nothing is around it",
    },
    // Met says that neither the finger nor, on a top in easy reach, the wire gets there.
    worked: { by: "opening-access", met: "nothing | finger-short", notMet: "wire-on-top | finger | hand" },
  }),
  "allowed-opening": yesNo({
    asks: "Is it a whole lampholder, ceiling rose or pull switch, or an opening that changing a part or its function needs?",
    effort: "glance",
    yes: "it is an opening or a cover that the standard leaves free, whole and no larger than it has to be",
    no: "it is not an opening or a cover that the standard leaves free",
    worse: "no",
    worked: { by: "larger-opening", met: "yes" },
  }),
});
