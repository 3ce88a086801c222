import {
  type Evidence,
  expected,
  isExact,
  isKnown,
  isKnownFact,
  type Known,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { afterParting, energyLimitCeiling, firstLoops, operatingCurrent, source } from "@good-grounds/tables";
import type { Device, EnergyMarks, FaultRange, OvercurrentEnergy } from "./energy-marks.ts";
import { CEILING, NONE_HELD, SLOW } from "./remarks.ts";

type Energy = Evidence<"ampere-squared-second">;

/**
 * Breakers. Shown: the ceiling of their energy limiting class, for currents up to the marked breaking capacity. Expected:
 * what the fault current can carry until it ends. At the instant trip that is in less than 0.1 s by the product standard;
 * from one and a half times as much by its second zero, and from three times as much, for breakers that limit current
 * (BS EN 60898, BS EN 61009), by its first, or with less where the class is known: its ceiling falls at least in
 * proportion to the current. Breakers to BS 3871 claim no limit; their magnetic release at five times its setting parts the
 * contacts within a quarter of a cycle, and the current ends at the zero after that. Not known where the far end does not reach the instant trip.
 */
export function energyOfBreaker(
  marks: EnergyMarks,
  device: Device,
  { least, most }: FaultRange,
  reckon: Reckoner,
): OvercurrentEnergy {
  const nothing = (...by: Parameters<Reckoner["lookedUp"]>[2][]) => reckon.lookedUp(TERM.letThrough, undefined, ...by);
  if (!isKnown(least)) return { shown: nothing(marks.letThrough, least), instant: false, remarks: [] };
  const trips = operatingCurrent(device, 0.1);
  if (!isKnown(trips) || !(least.low >= trips.value)) {
    // The thermal part may have to clear it; how long that takes is not known here.
    return { shown: nothing(marks.letThrough, least), instant: false, remarks: [SLOW] };
  }
  const ceiling = classCeiling(marks, device, most, reckon);
  const carried = isKnown(most) ? carriedAtMost(marks, device, trips.value, { least, most }, reckon) : undefined;
  if (carried === undefined) {
    if (ceiling !== undefined) return { shown: ceiling, instant: true, remarks: [CEILING] };
    const { letThrough, energyClass, breakingCapacity } = marks;
    return {
      shown: nothing(letThrough, energyClass, breakingCapacity, ...(isKnown(most) ? [] : [most])),
      instant: true,
      remarks: [NONE_HELD],
    };
  }
  const bound = ceiling === undefined ? carried : reckon.smallest(TERM.letThrough, ceiling, carried);
  return {
    shown: ceiling ?? nothing(marks.letThrough, marks.energyClass, marks.breakingCapacity),
    expected: reckon.atMostOf(TERM.letThrough, bound),
    instant: true,
    remarks: [ceiling === undefined ? NONE_HELD : CEILING],
  };
}

/** Up to the ceiling of the energy limiting class, where the fault stays within the capacity it is marked for. */
function classCeiling(
  { breakingCapacity, energyClass }: EnergyMarks,
  device: Device,
  most: Evidence<"ampere">,
  reckon: Reckoner,
): Energy | undefined {
  if (!isExact(breakingCapacity) || !isKnownFact(energyClass)) return undefined;
  if (!isKnown(most) || !(most.high <= breakingCapacity.value)) return undefined;
  const ceiling = energyLimitCeiling({
    type: device.type,
    rated: device.rated,
    markedBreakingCapacity: breakingCapacity.value,
    energyClass: Number(energyClass.word),
  });
  if (!isKnown(ceiling)) return undefined;
  return reckon.atMostOf(
    TERM.letThrough,
    reckon.lookedUp(TERM.letThrough, ceiling, energyClass, breakingCapacity, most),
  );
}

/** Prospective currents for which the class has ceilings, A. */
const CLASS_CURRENTS = [3000, 6000, 10_000].map((amperes) =>
  expected(
    TERM.breakingCapacity,
    amperes,
    `at ${amperes} A a breaker for more lets through no more than the class allows one that is marked for it; below, the energy falls at least in proportion to the current`,
  ),
);

/**
 * Where a class is marked: its ceiling for the next current above, and below that in proportion. The ceilings themselves
 * fall faster than in proportion from one marked capacity to the next.
 */
function inProportion(
  { breakingCapacity, energyClass }: EnergyMarks,
  { type, rated }: Device,
  most: Evidence<"ampere">,
  reckon: Reckoner,
): Energy | undefined {
  if (!isKnown(most) || !isExact(breakingCapacity) || !isKnownFact(energyClass)) return undefined;
  const at = CLASS_CURRENTS.find(({ value }) => most.high <= value && value <= breakingCapacity.value);
  if (at === undefined) return undefined;
  const ceiling = energyLimitCeiling({
    type,
    rated,
    markedBreakingCapacity: at.value,
    energyClass: Number(energyClass.word),
  });
  if (!isKnown(ceiling)) return undefined;
  return reckon.product(
    TERM.letThrough,
    reckon.quotient(TERM.ratio, most, at),
    reckon.lookedUp(TERM.letThrough, ceiling, energyClass),
  );
}

/**
 * What a breaker's pole loses at its rated current at the least, W: makers state 1 to 3 W, and the product standards
 * permit 3 W up to 10 A. From memory; half of the least is taken. The resistance of a small pole, behind the bars where the
 * loop is read, holds its own fault current down.
 */
const LEAST_LOSS = 0.8;
/** Highest voltage to earth, V: the current is held down least. */
const HIGHEST = 253;

/** The current that is left of one at the bars of the board, A. */
function throughPole(atBars: number, rated: number): number {
  const pole = LEAST_LOSS / rated ** 2;
  return atBars / (1 + (atBars * pole) / HIGHEST);
}

/** Multiples of the instant trip from which the current ends by its second and by its first zero. */
const BY_SECOND_ZERO = 1.5;
const BY_FIRST_ZERO = 3;
/**
 * Of a breaker that claims no limit of current, from which its contacts part within 5 ms: the current reaches the setting
 * within 0.7 ms, and latch and contacts are left more than 4 ms. From memory of magnetic releases.
 */
const PARTS_AT_ONCE = 5;

/**
 * The most that is let through at any current of the range; undefined above what can be said. The greatest current is that
 * of the loop as read: a conductor that is not at its full temperature when the fault comes has more in hand than the
 * reading is out by.
 */
function carriedAtMost(
  marks: EnergyMarks,
  device: Device,
  trips: number,
  { least, most: measured }: { readonly least: Known<"ampere">; readonly most: Known<"ampere"> },
  reckon: Reckoner,
): Energy | undefined {
  const limits = device.standard !== "BS 3871";
  const amperes = throughPole(measured.value, device.rated);
  const atMost = timeCarried(amperes / trips, amperes, limits);
  if (atMost === undefined) return undefined;
  const asRead = expected(
    TERM.earthFaultCurrent,
    amperes,
    "at the board, by the loop as read, through the breaker's own pole",
  );
  const most = reckon.lookedUp(TERM.earthFaultCurrent, asRead, measured);
  const whole = reckon.letThrough(TERM.letThrough, most, atMost);
  const limited = limits && amperes / trips >= BY_FIRST_ZERO ? inProportion(marks, device, most, reckon) : undefined;
  const parts = [limited === undefined ? whole : reckon.smallest(TERM.letThrough, whole, limited)];
  // Just short of a step the current carries for longer: the worst of the range may lie there.
  for (const step of [BY_SECOND_ZERO, limits ? BY_FIRST_ZERO : PARTS_AT_ONCE]) {
    const current = step * trips;
    const below = timeCarried(step * (1 - 1e-12), current, limits);
    if (least.low >= current || amperes < current || below === undefined) continue;
    const at = expected(
      TERM.earthFaultCurrent,
      current,
      `just below ${step} times the instant trip, within the range of fault currents`,
    );
    parts.push(reckon.letThrough(TERM.letThrough, at, below));
  }
  const [only] = parts;
  return parts.length === 1 && only !== undefined ? only : reckon.largest(TERM.letThrough, ...parts);
}

function timeCarried(multiple: number, amperes: number, limits: boolean): Known<"second"> | undefined {
  if (multiple < BY_SECOND_ZERO) return TENTH;
  if (!limits && multiple >= PARTS_AT_ONCE) return afterParting(amperes);
  return firstLoops(amperes, limits && multiple >= BY_FIRST_ZERO ? 1 : 2);
}

const TENTH = expected(
  TERM.equivalentTime,
  0.1005,
  "opens in less than 0.1 s at its instant trip, and a fault that starts at the worst moment carries little more",
  [0, 0.1005],
  source("BS EN 60898-1, BS EN 61009-1 and BS 3871-1, instant trip", "current and withdrawn", "published"),
);
