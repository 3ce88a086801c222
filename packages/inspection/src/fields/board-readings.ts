import { FAULT_CURRENT_METHODS, TERM } from "@good-grounds/core";
import { readingField, wordField } from "./make.ts";
import { MATTER } from "./matters.ts";

const CORRECT = ["correct", "incorrect"] as const;

/** What is measured at a board. The insulation readings are those of all its circuits together, connected as usual for the test. */
export const BOARD_READINGS = Object.freeze({
  zdb: readingField(TERM.measuredZdb, "loop", {
    label: "Zdb",
    help: "loop impedance at the board",
    meaning: "earth fault loop impedance at the board",
  }),
  faultCurrent: readingField(TERM.measuredFaultCurrent, "fault-current", {
    label: "PFC",
    help: "prospective fault current",
    meaning: "prospective fault current at the board",
  }),
  faultCurrentMethod: wordField(MATTER.faultCurrentMethod, FAULT_CURRENT_METHODS, { label: "Measured" }),
  polarity: wordField(MATTER.polarity, CORRECT, { label: "Polarity" }),
  phaseSequence: wordField(MATTER.phaseSequence, CORRECT, { label: "Phase sequence" }),
  insulationLiveLive: readingField(TERM.insulation, "insulation", {
    label: "IR L–N",
    meaning: "insulation resistance between live conductors, all circuits together",
  }),
  insulationLiveEarth: readingField(TERM.insulation, "insulation", {
    label: "IR L+N–E",
    meaning: "insulation resistance between live conductors and earth, all circuits together",
  }),
});
