import type { ContradictionId } from "@good-grounds/core";

/** What is said of one kind of contradiction: what was ticked or said, in words, and where the other record stands. */
type Said = (ticked: string, places: string) => string;

/** What does not go together, and what settles it. Nobody is blamed: one of the two was written first, and things change. */
export const CONTRADICTION: Readonly<Record<ContradictionId, Said>> = Object.freeze({
  "stated-against-file": (_, places) =>
    `What is stated contradicts what the file records or a finding shows, and no reason is written: ${places}. Settle which is so.`,
  "danger-unnamed": (_, places) =>
    `Classified as danger, and no item of the inspection names it, while items of the same place are in order: ${places}. Name the observation at the item it belongs to.`,
  "made-safe-and-to-make-safe": (_, places) =>
    `Recorded as made safe, while the remedy asks for it to be made safe now: ${places}. Say what is left to do.`,
  "told-and-untold": (_, places) =>
    `Recorded who was told of the danger, and also why nobody could be told: ${places}. Keep the one that is so.`,
  "in-order-beside-none": (ticked, places) =>
    `${ticked} is in order, while nothing of the kind is recorded as there: ${places}. Choose “not applicable” or an observation, or write there why it is in order without.`,
  "in-order-beside-failed-check": (ticked, places) =>
    `${ticked} is in order, while a check of the same is not met: ${places}. Name the observation there, or write why both stand.`,
  "not-applicable-beside-recorded": (ticked, places) =>
    `${ticked} is not applicable, while what it asks about is recorded: ${places}. Answer it, or correct the record.`,
  "polarity-beside-readings": (_, places) =>
    `Polarity is confirmed, while an entry before it or the readings of the circuit have conductors the wrong way round: ${places}. Prove polarity there again.`,
  "button-beside-failed-time": (_, places) =>
    `The test button works, while the instrument shows that the RCD does not open in time: ${places}. Both can be so; test it again.`,
  "cannot-be-tested-beside-time": (_, places) =>
    `Recorded as impossible to test, while a time of its test is recorded: ${places}. Keep the one that is so.`,
  "limitation-over-measured": (ticked, places) =>
    `${ticked} is a limitation of the whole, while readings of it are recorded: ${places}. Say what the limitation leaves out.`,
  "outcome-stated-otherwise": (_, places) =>
    places === ""
      ? "The outcome is stated as unsatisfactory, while no classification makes it so. State it as it follows, or classify what makes it so."
      : `The outcome is stated as satisfactory, while these classifications make it unsatisfactory: ${places}. State it as it follows, or look at them again.`,
});
