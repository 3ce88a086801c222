import { FAULT_CURRENT_METHODS, TERM } from "@good-grounds/core";
import { readingField, wordField } from "./make.ts";
import { MATTER } from "./matters.ts";

const CORRECT = ["correct", "incorrect"] as const;

/** What is measured at the origin. */
export const SUPPLY_READINGS = Object.freeze({
  ze: readingField(TERM.measuredZe, "loop", { label: "Ze", meaning: "external earth fault loop impedance" }),
  ra: readingField(TERM.measuredRa, "electrode", { label: "RA", meaning: "earth electrode resistance" }),
  lineNeutralLoop: readingField(TERM.lineNeutralLoop, "loop", {
    label: "Loop L–N",
    meaning: "line to neutral loop impedance at the origin",
  }),
  faultCurrent: readingField(TERM.measuredFaultCurrent, "fault-current", {
    label: "PFC",
    meaning: "prospective fault current at the origin",
  }),
  faultCurrentMethod: wordField(MATTER.faultCurrentMethod, FAULT_CURRENT_METHODS, { label: "Measured" }),
  earthFaultCurrent: readingField(TERM.earthFaultCurrent, "fault-current", {
    label: "PEFC",
    meaning: "prospective earth fault current at the origin",
  }),
  voltage: readingField(TERM.measuredVoltage, "voltage", {
    label: "Voltage",
    meaning: "supply voltage, line to neutral",
  }),
  neutralEarth: readingField(TERM.neutralEarthVoltage, "voltage", {
    label: "Voltage N–E",
    help: "under load; a high one may be a broken neutral",
    meaning: "voltage between neutral and earth at the origin",
    usual: [0, 100],
  }),
  polarity: wordField(MATTER.polarity, CORRECT, { label: "Polarity" }),
  phaseSequence: wordField(MATTER.phaseSequence, CORRECT, { label: "Phase sequence" }),
});
