import { type CircuitBlock, circuitBlock } from "./circuit-model.ts";
import type { RowOfAnother } from "./fault.ts";
import { type SoundFit, soundFit } from "./judge-block.ts";
import type { SharedErrors } from "./shared-errors.ts";
import type { Moments } from "./shared-fit.ts";

/** A row that fits its own circuit no better than this, as a log density for a reading, may as well be anything. */
const ANYTHING = -2;

/** What the rows of other circuits of a board have to do with this one's: the readings of each on the cable of the other. */
export function rowsOf(
  circuit: CircuitBlock,
  others: readonly CircuitBlock[],
  moments: Moments,
  shared: SharedErrors,
): readonly RowOfAnother[] {
  if (circuit.readings.length < 2) return [];
  return others.flatMap((other): RowOfAnother[] => {
    if (other.ring !== circuit.ring || !(other.cableKnown ? mayBe(circuit, other) : fitsHere(other, circuit)))
      return [];
    const mine = on(other, circuit, moments, shared);
    if (mine === undefined) return [];
    return [
      {
        other,
        mine: mine.logDensity,
        expected: () => mine.expected,
        get theirs() {
          const there = on(circuit, other, moments, shared)?.logDensity ?? Number.NEGATIVE_INFINITY;
          const own = soundFit(other, moments)?.logDensity ?? Number.NEGATIVE_INFINITY;
          return there - Math.max(own, ANYTHING * other.readings.length);
        },
      },
    ];
  });
}

/** A cheap look before anything is fitted: R1+R2 is within what the other cable may have, or written there as well. */
function mayBe({ slots, readings }: CircuitBlock, { nominal, ...other }: CircuitBlock): boolean {
  const read = readings[slots.indexOf("r1r2")];
  if (read === undefined) return true;
  const there = other.readings[other.slots.indexOf("r1r2")]?.evidence.detail.text;
  const whole = nominal.line + nominal.cpc;
  return there === read.evidence.detail.text || Math.abs(read.value - whole) < 0.4 * whole + 0.1;
}

/** A row whose own cable is not known may be of this one where its R1+R2 is what this cable gives. */
function fitsHere({ slots, readings }: CircuitBlock, { nominal, cableKnown }: CircuitBlock): boolean {
  const read = readings[slots.indexOf("r1r2")];
  const whole = nominal.line + nominal.cpc;
  return cableKnown && read !== undefined && Math.abs(read.value - whole) < 0.4 * whole + 0.02;
}

/** How the readings of one circuit go with the cable of another. */
function on(
  cable: CircuitBlock,
  { circuit: { readings } }: CircuitBlock,
  moments: Moments,
  shared: SharedErrors,
): SoundFit | undefined {
  const block = circuitBlock({ ...cable.circuit, readings }, [], shared);
  return block === undefined ? undefined : soundFit(block, moments);
}
