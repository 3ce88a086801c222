import type { OtherSource } from "@good-grounds/core";
import { REPORT } from "./report-en.ts";

const SOURCE: Readonly<Record<OtherSource, string>> = Object.freeze({
  photovoltaic: "solar panels",
  battery: "a battery",
  generator: "a generator",
  wind: "a wind turbine",
  vehicle: "a vehicle",
  ups: "an uninterruptible supply",
  other: "another source",
});

/** Words of the chart for the door of a board. */
export const CHART = Object.freeze({
  name: "Circuit chart",
  noBoard: "No board is recorded in this inspection.",
  from: "Fed from",
  fromSupply: "the supply",
  fromCircuit: (board: string, designation: string) => `${board}, circuit ${designation}`,
  at: "Board at",
  switch: "Main switch",
  noSwitch: "none in this board",
  ahead: "RCD ahead of it",
  asOf: (on: string) => `As found on ${REPORT.day(on)}`,
  asOfLabel: "State",
  columns: ["No", "Serves", "Device", "RCD", "Notes"] as const,
  noCircuits: "No circuits are recorded on this board.",
  caption: (board: string) => `Circuits of ${board}`,
  sources: (kinds: readonly OtherSource[]) =>
    `More than one source: ${kinds.map((kind) => SOURCE[kind]).join(", ")} may feed this installation as well. Switch off and lock off every source before work.`,
  button:
    "Every six months press the button marked T on each RCD. The power has to go off at once. If it does not, call an electrician.",
  change: "Whoever changes a circuit writes it here, with the date.",
  points: (count: number) => `${count} ${count === 1 ? "point" : "points"}`,
  phases: "three-phase",
});
