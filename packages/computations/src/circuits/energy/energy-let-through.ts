import { isKnown, isKnownFact, type Reckoner, type Remark, TERM } from "@good-grounds/core";
import { breakerType, FUSES } from "@good-grounds/tables";
import { markedDevice, marksOf } from "../device-figures.ts";
import { energyOfBreaker } from "./breaker.ts";
import type { EnergyMarks, FaultRange, OvercurrentEnergy } from "./energy-marks.ts";
import { energyOfFuse } from "./fuse.ts";
import { NONE_HELD } from "./remarks.ts";

export type { EnergyMarks, FaultRange, OvercurrentEnergy } from "./energy-marks.ts";

/**
 * Energy let through for an earth fault anywhere in a range of prospective currents. The maker's figure, where it is
 * stated, is enough by itself. Breakers and fuses have files of their own; of another device only its maker knows.
 */
export function energyByOvercurrent(marks: EnergyMarks, fault: FaultRange, reckon: Reckoner): OvercurrentEnergy {
  if (isKnown(marks.letThrough)) return { shown: marks.letThrough, instant: true, remarks: [MAKERS] };
  const device = markedDevice(marks);
  const nothing = (...by: Parameters<Reckoner["lookedUp"]>[2][]) => reckon.lookedUp(TERM.letThrough, undefined, ...by);
  if (device === undefined) return { shown: nothing(...marksOf(marks), fault.least), instant: false, remarks: [] };
  if (breakerType(device.standard, device.type) !== undefined) return energyOfBreaker(marks, device, fault, reckon);
  if (FUSES.has(device.standard)) return energyOfFuse(marks, device, fault, reckon);
  return { shown: nothing(marks.letThrough, fault.least), instant: isKnownFact(marks.standard), remarks: [NONE_HELD] };
}

const MAKERS: Remark = Object.freeze({
  code: "energy-from-maker",
  words: "The energy let through is the maker's figure stated in the file.",
});
