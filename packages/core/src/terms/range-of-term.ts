import type { InstrumentRange } from "../vocabulary/instrument.ts";
import { TERM } from "./index.ts";
import type { Term } from "./term.ts";

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
  [TERM.neutralEarthVoltage, "voltage"],
  [TERM.testTemperature, "temperature"],
  [TERM.rcdTime, "rcd-time"],
  [TERM.rcdTimeFive, "rcd-time"],
  [TERM.insulation, "insulation"],
  [TERM.partToTerminal, "insulation"],
  [TERM.bondResistance, "continuity"],
  [TERM.betweenParts, "continuity"],
  [TERM.ringLine, "continuity"],
  [TERM.ringNeutral, "continuity"],
  [TERM.ringCpc, "continuity"],
  [TERM.ringCrossLineNeutral, "continuity"],
  [TERM.ringCrossLineCpc, "continuity"],
  [TERM.measuredR1R2, "continuity"],
  [TERM.measuredR2, "continuity"],
]);

/** The range of an instrument that a quantity is read on; undefined for one that is read off no such instrument. */
export function rangeOf(term: Term): InstrumentRange | undefined {
  return RANGE.get(term);
}
