import type { ExpectedReading } from "@good-grounds/core";
import type { Block, CircuitBlock } from "./circuit-model.ts";
import type { CircuitFault, Effect, Surroundings } from "./fault.ts";
import { addOuter, factored, givenOthers, inner, logDensity, logSum, solved } from "./gaussian.ts";
import { SharedErrors } from "./shared-errors.ts";
import { type Moments, withShared } from "./shared-fit.ts";
import { isLive } from "./slot.ts";

/** How well a block's readings go with what the rest of the board says, were the place sound. */
export interface SoundFit {
  readonly logDensity: number;
  /** Squared distance from what was expected, in deviations. */
  readonly distance: number;
  readonly expected: readonly ExpectedReading[];
}

/** One explanation fitted: its evidence, its most likely size and what the readings would be under it. */
export interface FaultFit {
  readonly fault: CircuitFault;
  /** Evidence with the prior share in it, as a logarithm. */
  readonly logEvidence: number;
  readonly best: Effect;
  readonly expected: readonly ExpectedReading[];
}

export function soundFit(block: Block, moments: Moments): SoundFit | undefined {
  const covariance = factored(withShared(block.covariance, block.shared, moments.covariance), block.slots.length);
  if (covariance === undefined) return undefined;
  const deviation = deviationOf(block, moments, () => 0, block.shared);
  return {
    logDensity: logDensity(covariance, deviation),
    distance: inner(deviation, solved(covariance, deviation)),
    get expected() {
      return expectedOf(block, covariance, deviation);
    },
  };
}

/** Fits every explanation that has something to say about the block. */
export function faultFits(
  faults: readonly CircuitFault[],
  block: CircuitBlock,
  moments: Moments,
  around: Surroundings,
): readonly FaultFit[] {
  // Most effects leave the shared errors as they are: what those do to the block is worked out once.
  const plain: Plain = {
    covariance: withShared(block.covariance, block.shared, moments.covariance),
    deviation: deviationOf(block, moments, () => 0, block.shared),
  };
  return faults.flatMap((fault): FaultFit[] => {
    const effects = fault.effects(block, around);
    let best: { readonly log: number; readonly effect: Effect } | undefined;
    const logs: number[] = [];
    for (const effect of effects) {
      const log = effect.logWeight + evidenceOf(block, moments, plain, effect);
      if (!Number.isFinite(log)) continue;
      logs.push(log);
      if (best === undefined || log > best.log) best = { log, effect };
    }
    if (best === undefined) return [];
    const { effect } = best;
    return [
      {
        fault,
        logEvidence: Math.log(fault.prior) + logSum(logs),
        best: effect,
        get expected() {
          const [covariance, deviation] = under(block, moments, plain, effect);
          return covariance === undefined ? [] : expectedOf(block, covariance, deviation);
        },
      },
    ];
  });
}

/** The block under the shared errors, were it sound. */
interface Plain {
  readonly covariance: Float64Array;
  readonly deviation: Float64Array;
}

function evidenceOf(block: Block, moments: Moments, plain: Plain, effect: Effect): number {
  const [covariance, deviation, correction] = under(block, moments, plain, effect);
  return covariance === undefined ? Number.NEGATIVE_INFINITY : logDensity(covariance, deviation) + correction;
}

/** The readings as a normal vector under an effect, with what a foreign reading's density is instead. */
function under(block: Block, moments: Moments, plain: Plain, effect: Effect) {
  const { slots, readings } = block;
  const rows =
    effect.beforeShare === 1
      ? undefined
      : block.shared.map((row, i) => {
          if (!isLive(slots[i] ?? "r1r2")) return row;
          const lesser = row.slice();
          lesser[SharedErrors.BEFORE] = (lesser[SharedErrors.BEFORE] as number) * effect.beforeShare;
          return lesser;
        });
  const covariance =
    rows === undefined ? plain.covariance.slice() : withShared(block.covariance, rows, moments.covariance);
  addOuter(covariance, Float64Array.from(slots, effect.step));
  let correction = 0;
  if (effect.foreign !== undefined) {
    const at = slots.indexOf(effect.foreign.slot);
    const wide = WIDE * ((readings[at]?.value ?? 0) + 1);
    covariance[at * slots.length + at] = (covariance[at * slots.length + at] as number) + wide * wide;
    // The wide spread takes the reading out of the fit; its own density stands in for that of the spread.
    correction = effect.foreign.logDensity + 0.5 * Math.log(2 * Math.PI * wide * wide);
  }
  const deviation =
    rows === undefined
      ? plain.deviation.map((off, i) => off - effect.shift(slots[i] ?? "r1r2"))
      : deviationOf(block, moments, (i) => effect.shift(slots[i] ?? "r1r2"), rows);
  return [factored(covariance, slots.length), deviation, correction] as const;
}

const WIDE = 1000;

function deviationOf(
  { readings, mean }: Block,
  { mean: shared }: Moments,
  shift: (i: number) => number,
  rows: readonly Float64Array[],
): Float64Array {
  return Float64Array.from(
    readings,
    ({ value }, i) => value - (mean[i] as number) - shift(i) - inner(rows[i] as Float64Array, shared),
  );
}

/** Each reading as the others would have it: the middle 95 %. */
function expectedOf(
  { readings }: Block,
  covariance: NonNullable<ReturnType<typeof factored>>,
  deviation: Float64Array,
): readonly ExpectedReading[] {
  return readings.map(({ value, evidence }, i) => {
    const [off, spread] = givenOthers(covariance, deviation, i);
    const middle = value - (deviation[i] as number) + off;
    return {
      path: evidence.detail.path,
      value: Math.max(0, middle),
      low: Math.max(0, middle - 1.96 * spread),
      high: Math.max(0, middle + 1.96 * spread),
    };
  });
}
