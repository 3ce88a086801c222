import { TERM, type Term } from "@good-grounds/core";
import type { InstrumentQuantity } from "@good-grounds/tables";

/** A range of an instrument, as inspection files name them. */
export type InstrumentRange =
  | "continuity"
  | "insulation"
  | "loop"
  | "fault-current"
  | "rcd-time"
  | "electrode"
  | "voltage"
  | "temperature";

/** The range each quantity is read on. */
const RANGE: ReadonlyMap<Term, InstrumentRange> = new Map<Term, InstrumentRange>([
  [TERM.measuredZe, "loop"],
  [TERM.measuredZdb, "loop"],
  [TERM.measuredZs, "loop"],
  [TERM.lineNeutralLoop, "loop"],
  [TERM.measuredRa, "electrode"],
  [TERM.measuredFaultCurrent, "fault-current"],
  [TERM.earthFaultCurrent, "fault-current"],
  [TERM.standingLeakage, "fault-current"],
  [TERM.measuredVoltage, "voltage"],
  [TERM.testTemperature, "temperature"],
  [TERM.rcdTime, "rcd-time"],
  [TERM.rcdTimeFive, "rcd-time"],
  [TERM.insulation, "insulation"],
  [TERM.bondResistance, "continuity"],
  [TERM.ringLine, "continuity"],
  [TERM.ringNeutral, "continuity"],
  [TERM.ringCpc, "continuity"],
  [TERM.ringCrossLineNeutral, "continuity"],
  [TERM.ringCrossLineCpc, "continuity"],
  [TERM.measuredR1R2, "continuity"],
  [TERM.measuredR2, "continuity"],
]);

/** The range a quantity is read on; undefined for one that is read off no such instrument. */
export function rangeOf(term: Term): InstrumentRange | undefined {
  return RANGE.get(term);
}

/**
 * The part of the instrument standard whose ceiling stands in where no accuracy is stated. A prospective fault current
 * is a loop impedance shown the other way round and has the ceiling of that. Voltage and temperature have none.
 */
export const CEILING_OF: Readonly<Record<InstrumentRange, InstrumentQuantity | null>> = Object.freeze({
  continuity: "continuity",
  insulation: "insulation",
  loop: "loop",
  "fault-current": "loop",
  "rcd-time": "rcd-time",
  electrode: "electrode",
  voltage: null,
  temperature: null,
});
