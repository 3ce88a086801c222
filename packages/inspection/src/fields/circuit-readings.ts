import { TERM } from "@good-grounds/core";
import { pointsField, readingField, wordField } from "./make.ts";
import { MATTER } from "./matters.ts";

/** What is measured on a circuit, in the order of the tests. */
export const CIRCUIT_READINGS = Object.freeze({
  temperature: readingField(TERM.testTemperature, "temperature", {
    label: "Conductor temperature",
    meaning: "conductor temperature during the tests",
  }),
  r1: readingField(TERM.ringLine, "continuity", {
    label: "r1",
    help: "line, end to end",
    meaning: "end-to-end resistance of the ring line conductor",
  }),
  rn: readingField(TERM.ringNeutral, "continuity", {
    label: "rn",
    help: "neutral, end to end",
    meaning: "end-to-end resistance of the ring neutral conductor",
  }),
  r2: readingField(TERM.ringCpc, "continuity", {
    label: "r2",
    help: "protective, end to end",
    meaning: "end-to-end resistance of the ring protective conductor",
  }),
  crossLineNeutral: pointsField(TERM.ringCrossLineNeutral, "continuity", {
    label: "L–N",
    meaning: "line to neutral reading, ring cross-connected",
  }),
  crossLineCpc: pointsField(TERM.ringCrossLineCpc, "continuity", {
    label: "L–cpc",
    meaning: "line to protective conductor reading, ring cross-connected",
  }),
  r1r2: readingField(TERM.measuredR1R2, "continuity", {
    label: "R1+R2",
    help: "furthest point",
    meaning: "R1+R2 at the furthest point",
  }),
  r2Only: readingField(TERM.measuredR2, "continuity", {
    label: "R2",
    help: "long lead, instead of R1+R2",
    meaning: "R2 by the long-lead method",
  }),
  insulationVoltage: wordField(MATTER.insulationVoltage, ["250 V", "500 V", "1000 V"], { label: "Test voltage" }),
  insulationLiveLive: readingField(TERM.insulation, "insulation", {
    label: "IR L–N",
    help: "between live conductors",
    meaning: "insulation resistance between live conductors",
  }),
  insulationLiveEarth: readingField(TERM.insulation, "insulation", {
    label: "IR L+N–E",
    help: "live conductors to earth",
    meaning: "insulation resistance between live conductors and earth",
  }),
  /** The circuit's neutral, off its bar, against the neutrals of all others: shows a neutral that circuits share. */
  insulationBetweenNeutrals: readingField(TERM.insulation, "insulation", {
    label: "IR N–N",
    help: "off its bar, against the other neutrals",
    meaning: "insulation resistance between the neutral and those of the other circuits",
  }),
  polarity: wordField(MATTER.polarity, ["correct", "incorrect"], { label: "Polarity" }),
  zs: readingField(TERM.measuredZs, "loop", {
    label: "Zs",
    help: "furthest point",
    meaning: "earth fault loop impedance at the furthest point",
  }),
  faultCurrent: readingField(TERM.measuredFaultCurrent, "fault-current", {
    label: "PFC",
    help: "prospective fault current",
    meaning: "prospective fault current",
  }),
  leakage: readingField(TERM.standingLeakage, "fault-current", {
    label: "Leakage",
    help: "protective conductor current in service",
    meaning: "protective conductor current in service",
  }),
});
