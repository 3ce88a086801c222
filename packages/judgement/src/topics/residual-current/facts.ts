import { oneKind, ranked, yesNo } from "@good-grounds/core";

/** Questions that several topics about RCDs ask in the same words. */

/** What hangs on the RCD, from least to most. */
export const ROLE = ranked({
  asks: "What does the RCD do here?",
  effort: "opened",
  values: {
    additional: "the RCD gives additional protection, and faults are cleared without it",
    "wet-or-outdoors": "the RCD gives additional protection where people are wet or outdoors",
    "fault-protection":
      "the RCD is what disconnects an earth fault, as on TT or where the loop is too high for the breaker",
  },
});

export const SYSTEM = oneKind({
  asks: "Is the earth an electrode of the consumer's own (TT)?",
  effort: "opened",
  values: { tt: "the system is TT", tn: "the system is TN" },
});

/** Whether darkness or loss of supply is more than a nuisance. */
export const LOSS_HURTS = yesNo({
  asks: "Would a sudden loss of everything put anyone here at risk: frail persons, steep stairs, medical equipment?",
  effort: "glance",
  yes: "a sudden loss of everything would put somebody here at risk",
  no: "a sudden loss of everything would be a nuisance only",
  worse: "yes",
});
