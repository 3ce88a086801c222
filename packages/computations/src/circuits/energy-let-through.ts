import {
  type Evidence,
  type Fact,
  isExact,
  isKnown,
  isKnownFact,
  published,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { breakerType, energyLimitCeiling, FUSES, operatingCurrent, source } from "@good-grounds/tables";
import { type DeviceMarks, markedDevice, marksOf } from "./device-figures.ts";

/** What the energy an overcurrent device lets through is found from. */
export interface EnergyMarks extends DeviceMarks {
  readonly breakingCapacity: Evidence<"ampere">;
  readonly energyClass: Fact<"1" | "2" | "3">;
  readonly letThrough: Evidence<"ampere-squared-second">;
}

export interface OvercurrentEnergy {
  readonly energy: Evidence<"ampere-squared-second">;
  /** Whether the device is one that opens in less than 0.1 s at this fault, so that the formula with a time does not hold. */
  readonly instant: boolean;
  /** Which evidence is held, in words. */
  readonly remarks: readonly Remark[];
}

/**
 * Energy let through for an earth fault of `far` amperes at the far end, as a band. Breakers: the maker's figure, else up
 * to the ceiling of their energy limiting class, else not known. Fuses: between their known points. Not known where
 * the fault does not reach a known point.
 */
export function energyByOvercurrent(marks: EnergyMarks, far: Evidence<"ampere">, reckon: Reckoner): OvercurrentEnergy {
  const device = markedDevice(marks);
  if (device === undefined || !isKnown(far)) return open(marks, far, reckon);
  if (breakerType(device.standard, device.type) !== undefined) return ofBreaker(marks, device, far, reckon);
  if (FUSES.has(device.standard)) return ofFuse(marks, device, far, reckon);
  return makersOnly(marks, far, reckon);
}

type Device = NonNullable<ReturnType<typeof markedDevice>>;

function open(marks: EnergyMarks, far: Evidence<"ampere">, reckon: Reckoner): OvercurrentEnergy {
  return { energy: reckon.lookedUp(TERM.letThrough, undefined, ...marksOf(marks), far), instant: false, remarks: [] };
}

function makersOnly(marks: EnergyMarks, far: Evidence<"ampere">, reckon: Reckoner): OvercurrentEnergy {
  if (isKnown(marks.letThrough)) return { energy: marks.letThrough, instant: true, remarks: [MAKERS] };
  return {
    energy: reckon.lookedUp(TERM.letThrough, undefined, marks.letThrough, far),
    instant: true,
    remarks: [NONE_HELD],
  };
}

function ofBreaker(marks: EnergyMarks, device: Device, far: Evidence<"ampere">, reckon: Reckoner): OvercurrentEnergy {
  if (isKnown(marks.letThrough)) return { energy: marks.letThrough, instant: true, remarks: [MAKERS] };
  const trips = operatingCurrent(device, 0.1);
  if (!isKnown(trips) || !(far.low >= trips.value)) {
    // The thermal part may have to clear it; how long that takes is not known here.
    return {
      energy: reckon.lookedUp(TERM.letThrough, undefined, marks.letThrough, far),
      instant: false,
      remarks: [SLOW],
    };
  }
  const { breakingCapacity, energyClass } = marks;
  const ceiling =
    isExact(breakingCapacity) && isKnownFact(energyClass)
      ? energyLimitCeiling({
          type: device.type,
          rated: device.rated,
          markedBreakingCapacity: breakingCapacity.value,
          energyClass: Number(energyClass.word),
        })
      : undefined;
  if (ceiling === undefined || !isKnown(ceiling)) {
    const energy = reckon.lookedUp(TERM.letThrough, undefined, marks.letThrough, energyClass, breakingCapacity);
    return { energy, instant: true, remarks: [NONE_HELD] };
  }
  const found = reckon.lookedUp(TERM.letThrough, ceiling, energyClass, breakingCapacity);
  return { energy: reckon.atMostOf(TERM.letThrough, found), instant: true, remarks: [CEILING] };
}

/** Energy at a known point of a fuse, I²t, A²s. */
function pointEnergy(device: Device, seconds: number, reckon: Reckoner): Evidence<"ampere-squared-second"> {
  return reckon.letThrough(TERM.letThrough, operatingCurrent(device, seconds), TIMES[seconds === 5 ? 5 : 0.4]);
}

/** The energy of a fuse does not grow with current, so a fault beyond a known point lets through at most that point's. */
function ofFuse(marks: EnergyMarks, device: Device, far: Evidence<"ampere">, reckon: Reckoner): OvercurrentEnergy {
  if (isKnown(marks.letThrough)) return { energy: marks.letThrough, instant: true, remarks: [MAKERS] };
  const fast = operatingCurrent(device, 0.4);
  const slow = operatingCurrent(device, 5);
  const by = marksOf(marks);
  if (isKnown(fast) && far.low >= fast.value * (1 - 1e-9)) {
    const most = reckon.lookedUp(TERM.letThrough, pointEnergy(device, 0.4, reckon), ...by, far);
    return { energy: reckon.atMostOf(TERM.letThrough, most), instant: false, remarks: [] };
  }
  if (isKnown(slow) && far.low >= slow.value * (1 - 1e-9)) {
    const most = reckon.lookedUp(TERM.letThrough, pointEnergy(device, 5, reckon), ...by, far);
    const energy =
      isKnown(fast) && far.high <= fast.value
        ? reckon.between(TERM.letThrough, pointEnergy(device, 0.4, reckon), most)
        : reckon.atMostOf(TERM.letThrough, most);
    return { energy, instant: false, remarks: [] };
  }
  return {
    energy: reckon.lookedUp(TERM.letThrough, undefined, marks.letThrough, far),
    instant: false,
    remarks: [SLOW],
  };
}

const POINT = source("time of the fuse's known point", "none", "derived");

const TIMES = Object.freeze({
  0.4: published(TERM.operatingTime, 0.4, POINT, "0.4 s"),
  5: published(TERM.operatingTime, 5, POINT, "5 s"),
});

const MAKERS: Remark = Object.freeze({
  code: "energy-from-maker",
  words: "The energy let through is the maker's figure stated in the file.",
});

const CEILING: Remark = Object.freeze({
  code: "energy-from-class",
  words:
    "Only the ceiling of the energy limiting class is held. It belongs to the marked breaking capacity, not to this fault current; the maker's curve may settle it.",
});

const NONE_HELD: Remark = Object.freeze({
  code: "energy-not-held",
  words:
    "The device opens in less than 0.1 s, and no let-through energy is held: ask for the maker's figure at this fault current, or the energy class on the label.",
});

const SLOW: Remark = Object.freeze({
  code: "fault-below-known-point",
  words: "The fault current at the far end does not reach a current at which the operating time is known.",
});
