import type { ExpectedReading } from "@good-grounds/core";
import type { Block, CircuitBlock } from "./circuit-model.ts";
import type { CircuitFault, Effect, Surroundings } from "./fault.ts";
import { type Factored, factored, givenOthers, inner, logDensity, logSum, solved, whitened } from "./gaussian.ts";
import { type Moments, withShared } from "./shared-fit.ts";
import { type Sound, under } from "./under-effect.ts";

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
  /** The prior share by itself. */
  readonly logPrior: number;
  /** Density of the readings at the most likely size. */
  readonly peak: number;
  readonly best: Effect;
  readonly expected: readonly ExpectedReading[];
}

export function soundFit(block: Block, moments: Moments): SoundFit | undefined {
  const covariance = factored(withShared(block.covariance, block.shared, moments.covariance), block.slots.length);
  if (covariance === undefined) return undefined;
  const deviation = deviationOf(block, moments);
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
  const sound: Sound = {
    covariance: withShared(block.covariance, block.shared, moments.covariance),
    deviation: deviationOf(block, moments),
  };
  const evidenceOf = evidenceUnder(block, moments, sound);
  return faults.flatMap((fault): FaultFit[] => {
    const effects = fault.effects(block, around);
    let best: { readonly log: number; readonly effect: Effect } | undefined;
    const logs: number[] = [];
    for (const effect of effects) {
      const log = effect.logWeight + evidenceOf(effect);
      if (!Number.isFinite(log)) continue;
      logs.push(log);
      if (best === undefined || log > best.log) best = { log, effect };
    }
    if (best === undefined) return [];
    const { effect, log } = best;
    const logPrior = Math.log(priorOf(fault, block, around));
    return [
      {
        fault,
        logEvidence: logPrior + logSum(logs),
        logPrior,
        peak: log - effect.logWeight,
        best: effect,
        get expected() {
          if (effect.outright !== undefined) return effect.outright.expected();
          const { covariance, deviation } = under(block, moments, sound, effect);
          const ready = factored(covariance, block.slots.length);
          return ready === undefined ? [] : expectedOf(block, ready, deviation);
        },
      },
    ];
  });
}

function priorOf({ prior, seenAs }: CircuitFault, block: CircuitBlock, around: Surroundings): number {
  const share = typeof prior === "number" ? prior : prior(block, around);
  return share * (seenAs === undefined ? 1 : (block.seen.get(seenAs) ?? 1));
}

/**
 * The logarithm of the density of a block's readings under an effect. A size that only adds to the readings changes the
 * covariance by one vector: distance and determinant follow from those of the sound block without solving anew.
 */
function evidenceUnder(block: CircuitBlock, moments: Moments, sound: Sound): (effect: Effect) => number {
  const { slots } = block;
  const size = slots.length;
  const plain = factored(sound.covariance, size);
  const off = new Float64Array(size);
  const step = new Float64Array(size);
  const constant = plain === undefined ? Number.NaN : plain.logDeterminant + size * Math.log(2 * Math.PI);
  return (effect) => {
    if (effect.outright !== undefined) return effect.outright.log;
    const adds = effect.beforeShare === 1 && effect.foreign === undefined && effect.standsAt === undefined;
    if (!adds || plain === undefined) return slowly(block, moments, sound, effect);
    for (let i = 0; i < size; i++) {
      const slot = slots[i] as (typeof slots)[number];
      off[i] = (sound.deviation[i] as number) - effect.shift(slot);
      step[i] = effect.step(slot);
    }
    whitened(plain, off);
    whitened(plain, step);
    const along = inner(step, off);
    const more = 1 + inner(step, step);
    return -0.5 * (inner(off, off) - (along * along) / more + Math.log(more) + constant);
  };
}

function slowly(block: CircuitBlock, moments: Moments, sound: Sound, effect: Effect): number {
  const { covariance, deviation, correction } = under(block, moments, sound, effect);
  const ready = factored(covariance, block.slots.length);
  return ready === undefined ? Number.NEGATIVE_INFINITY : logDensity(ready, deviation) + correction;
}

function deviationOf({ readings, mean, shared: rows }: Block, { mean: shared }: Moments): Float64Array {
  return Float64Array.from(
    readings,
    ({ value }, i) => value - (mean[i] as number) - inner(rows[i] as Float64Array, shared),
  );
}

/** Each reading as the others would have it: the middle 95 %. */
function expectedOf({ readings }: Block, covariance: Factored, deviation: Float64Array): readonly ExpectedReading[] {
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
