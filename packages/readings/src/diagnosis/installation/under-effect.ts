import type { CircuitBlock } from "./circuit-model.ts";
import type { Effect } from "./fault.ts";
import { addOuter, inner } from "./gaussian.ts";
import { SharedErrors } from "./shared-errors.ts";
import { type Moments, withShared } from "./shared-fit.ts";
import { isLive, type Slot } from "./slot.ts";

/** A block under the shared errors, were it sound. */
export interface Sound {
  readonly covariance: Float64Array;
  readonly deviation: Float64Array;
}

/** The readings as a normal vector under an effect. */
interface Under {
  readonly covariance: Float64Array;
  readonly deviation: Float64Array;
  /** What is added to the log density for readings whose density is another. */
  readonly correction: number;
}

/** Works out what an effect makes of a block, whatever it is. */
export function under(block: CircuitBlock, moments: Moments, sound: Sound, effect: Effect): Under {
  const { slots } = block;
  const plain = effect.beforeShare === 1 ? sound : withLessBefore(block, moments, effect.beforeShare);
  const covariance = plain.covariance.slice();
  addOuter(covariance, Float64Array.from(slots, effect.step));
  const deviation = plain.deviation.map((off, i) => off - effect.shift(slots[i] as Slot));
  const stood =
    effect.standsAt === undefined ? { covariance, deviation } : standing(block, covariance, deviation, effect.standsAt);
  return { ...stood, correction: takenOut(block, stood.covariance, effect.foreign ?? []) };
}

/** The block where the loop before the circuit bears on it by a part only. */
function withLessBefore(block: CircuitBlock, moments: Moments, share: number): Sound {
  const { slots, readings, mean } = block;
  const rows = block.shared.map((row, i) => {
    if (!isLive(slots[i] as Slot)) return row;
    const lesser = row.slice();
    lesser[SharedErrors.BEFORE] = (lesser[SharedErrors.BEFORE] as number) * share;
    return lesser;
  });
  return {
    covariance: withShared(block.covariance, rows, moments.covariance),
    deviation: Float64Array.from(
      readings,
      ({ value }, i) => value - (mean[i] as number) - inner(rows[i] as Float64Array, moments.mean),
    ),
  };
}

/** Readings that stand for others: what is true moves with them, what the instrument adds to a display does not. */
function standing(
  { slots, readings, noise }: CircuitBlock,
  covariance: Float64Array,
  deviation: Float64Array,
  standsAt: NonNullable<Effect["standsAt"]>,
): { covariance: Float64Array; deviation: Float64Array } {
  const size = slots.length;
  const places = slots.map((slot, i) => {
    const { of, times } = standsAt(slot);
    return { from: of === slot ? i : slots.indexOf(of), times };
  });
  const moved = new Float64Array(size * size);
  for (const [i, a] of places.entries()) {
    for (const [j, b] of places.entries()) {
      const truth = covariance[a.from * size + b.from] as number;
      const own = a.from === b.from ? (noise[a.from] as number) : 0;
      moved[i * size + j] = a.times * b.times * (truth - own) + (i === j ? (noise[i] as number) : 0);
    }
  }
  return {
    covariance: moved,
    deviation: Float64Array.from(places, ({ from, times }, i) => {
      const meant = (readings[from]?.value ?? 0) - (deviation[from] as number);
      return (readings[i]?.value ?? 0) - times * meant;
    }),
  };
}

/** Takes readings out of the fit by a wide spread; their own density stands in for that of the spread. */
function takenOut(
  { slots, readings }: CircuitBlock,
  covariance: Float64Array,
  foreign: NonNullable<Effect["foreign"]>,
): number {
  let correction = 0;
  for (const { slot, logDensity } of foreign) {
    const at = slots.indexOf(slot);
    const wide = WIDE * ((readings[at]?.value ?? 0) + 1);
    covariance[at * slots.length + at] = (covariance[at * slots.length + at] as number) + wide * wide;
    correction += logDensity + 0.5 * Math.log(2 * Math.PI * wide * wide);
  }
  return correction;
}

const WIDE = 1000;
