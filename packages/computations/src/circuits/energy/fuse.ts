import { type Evidence, expected, isKnown, type Known, published, type Reckoner, TERM } from "@good-grounds/core";
import { leastMeltingEnergy, operatingCurrent, source } from "@good-grounds/tables";
import { marksOf } from "../device-figures.ts";
import type { Device, EnergyMarks, FaultRange, OvercurrentEnergy } from "./energy-marks.ts";
import { SLOW } from "./remarks.ts";

type Energy = Evidence<"ampere-squared-second">;

/**
 * Fuses, whose energy does not grow with the current: the least fault current is the worst one. Shown: between their
 * known points. Expected: between the points no more than a straight line on logarithmic scales gives, as every
 * characteristic sags below it, and never less than it takes to melt the element. Not known below the known points. Of a
 * size with the point for 5 s alone: far beyond it no more than at the greatest current its 0.4 s may take.
 */
export function energyOfFuse(
  marks: EnergyMarks,
  device: Device,
  { least }: FaultRange,
  reckon: Reckoner,
): OvercurrentEnergy {
  const fast = operatingCurrent(device, 0.4);
  const slow = operatingCurrent(device, 5);
  if (isKnown(least) && isKnown(fast) && least.low >= fast.value * (1 - 1e-9)) {
    const most = ofPoint(marks, device, 0.4, least, reckon);
    return withExpected(reckon.atMostOf(TERM.letThrough, most), leastMeltingEnergy(device), most, reckon);
  }
  if (isKnown(least) && isKnown(slow) && least.low >= slow.value * (1 - 1e-9)) {
    const most = ofPoint(marks, device, 5, least, reckon);
    const isBetween = isKnown(fast) && least.high <= fast.value;
    const shown = isBetween
      ? reckon.between(TERM.letThrough, pointEnergy(device, 0.4, reckon), most)
      : reckon.atMostOf(TERM.letThrough, most);
    const line = isKnown(fast) ? alongLine(least, fast.value, slow.value) : farBeyond(least, slow.value, device);
    const upTo = line === undefined ? most : reckon.lookedUp(TERM.letThrough, line, ...marksOf(marks), least);
    const from = isBetween ? pointEnergy(device, 0.4, reckon) : leastMeltingEnergy(device);
    return withExpected(shown, from, upTo, reckon);
  }
  return {
    shown: reckon.lookedUp(TERM.letThrough, undefined, ...marksOf(marks), least, marks.letThrough),
    instant: false,
    remarks: isKnown(least) ? [SLOW] : [],
  };
}

function withExpected(shown: Energy, from: Energy | undefined, upTo: Energy, reckon: Reckoner): OvercurrentEnergy {
  const bounded =
    from === undefined ? reckon.atMostOf(TERM.letThrough, upTo) : reckon.between(TERM.letThrough, from, upTo);
  return { shown, expected: bounded, instant: false, remarks: [] };
}

/** The energy at a known point, with what it was found by. */
function ofPoint(
  marks: EnergyMarks,
  device: Device,
  seconds: 0.4 | 5,
  least: Evidence<"ampere">,
  reckon: Reckoner,
): Energy {
  return reckon.lookedUp(TERM.letThrough, pointEnergy(device, seconds, reckon), ...marksOf(marks), least);
}

/** Energy at a known point of a fuse, I²t, A²s. */
function pointEnergy(device: Device, seconds: 0.4 | 5, reckon: Reckoner): Energy {
  return reckon.letThrough(TERM.letThrough, operatingCurrent(device, seconds), TIMES[seconds]);
}

/**
 * A size without a known point for 0.4 s, far beyond its point for 5 s. The two points of the sizes that have both lie 1.5
 * to 2 times apart, of semi-enclosed fuses up to 2.8 times: beyond that it opens within 0.4 s as well, and its energy falls.
 */
function farBeyond(least: Known<"ampere">, slow: number, { standard }: Device): Energy | undefined {
  const times = standard === "BS 3036" ? 3 : 2.2;
  const amperes = times * slow;
  if (!(least.low >= amperes)) return undefined;
  const most = amperes ** 2 * 0.4;
  return expected(
    TERM.letThrough,
    most,
    `opens within 0.4 s from ${times} times its current for 5 s, as the sizes with both points do`,
    [0, most],
  );
}

/** The energy at the least current on the straight line between the points for 5 s and 0.4 s. */
function alongLine(least: Known<"ampere">, fast: number, slow: number): Energy {
  const steepness = Math.log(5 / 0.4) / Math.log(fast / slow);
  const at = (amperes: number) => amperes ** 2 * 5 * (slow / amperes) ** steepness;
  // Steeper than I² the energy falls with the current, else it grows: the worse end counts.
  const most = Math.max(at(Math.max(slow, least.low)), at(Math.min(fast, Math.max(slow, least.high))));
  return expected(
    TERM.letThrough,
    most,
    "on the straight line of logarithmic scales between the known points for 5 s and 0.4 s, below which the characteristic sags",
    [0, most],
  );
}

const POINT = source("time of the fuse's known point", "none", "derived");

const TIMES = Object.freeze({
  0.4: published(TERM.operatingTime, 0.4, POINT, "0.4 s"),
  5: published(TERM.operatingTime, 5, POINT, "5 s"),
});
