import type { Block } from "./circuit-model.ts";
import { type Factored, factored, inner, logDensity, solved } from "./gaussian.ts";

/** What is believed of the shared errors: precision matrix and precision times mean. */
export interface Belief {
  readonly size: number;
  readonly precision: Float64Array;
  readonly weighted: Float64Array;
}

/** Independent normal beliefs, one for each shared error. */
export function belief(means: readonly number[], deviations: readonly number[]): Belief {
  const size = means.length;
  const precision = new Float64Array(size * size);
  const weighted = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const weight = (deviations[i] as number) ** -2;
    precision[i * size + i] = weight;
    weighted[i] = weight * (means[i] as number);
  }
  return { size, precision, weighted };
}

/** What one block says of the shared errors; worked out once, added and taken away as blocks are left out. */
export interface Contribution extends Belief {
  /** Density of the block's readings were the shared errors at their starting point. */
  readonly logDensity: number;
}

/** Undefined where the block's numbers are too far apart in size to be solved. */
export function contributionOf(block: Block, readings: Float64Array, size: number): Contribution | undefined {
  const n = block.slots.length;
  const factor = factored(block.covariance, n);
  if (factor === undefined) return undefined;
  const deviation = readings.map((value, i) => value - (block.mean[i] as number));
  const precision = new Float64Array(size * size);
  const weighted = new Float64Array(size);
  const unweighted = solved(factor, deviation);
  for (let a = 0; a < size; a++) {
    const column = Float64Array.from(block.shared, (row) => row[a] as number);
    weighted[a] = inner(column, unweighted);
    const half = solved(factor, column);
    for (let b = 0; b < size; b++) {
      let sum = 0;
      for (let i = 0; i < n; i++) sum += (half[i] as number) * ((block.shared[i] as Float64Array)[b] as number);
      precision[a * size + b] = sum;
    }
  }
  return { size, precision, weighted, logDensity: logDensity(factor, deviation) };
}

/** A belief with a contribution added (sign 1) or taken away (sign −1). */
export function updated(from: Belief, by: Belief, sign: 1 | -1): Belief {
  return {
    size: from.size,
    precision: from.precision.map((value, i) => value + sign * (by.precision[i] as number)),
    weighted: from.weighted.map((value, i) => value + sign * (by.weighted[i] as number)),
  };
}

/** Mean and covariance of a belief. */
export interface Moments {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  readonly factor: Factored;
}

export function momentsOf({ size, precision, weighted }: Belief): Moments | undefined {
  const factor = factored(precision, size);
  if (factor === undefined) return undefined;
  const covariance = new Float64Array(size * size);
  for (let j = 0; j < size; j++) {
    const unit = new Float64Array(size);
    unit[j] = 1;
    const column = solved(factor, unit);
    for (let i = 0; i < size; i++) covariance[i * size + j] = column[i] as number;
  }
  return { mean: solved(factor, weighted), covariance, factor };
}

/** Logarithm of the density of all readings that contributed, under what was believed before them. */
export function logEvidence(prior: Belief, all: Belief, densities: number): number {
  const before = momentsOf(prior);
  const after = momentsOf(all);
  if (before === undefined || after === undefined) return Number.NEGATIVE_INFINITY;
  return (
    densities +
    0.5 * (inner(all.weighted, after.mean) - inner(prior.weighted, before.mean)) -
    0.5 * (after.factor.logDeterminant - before.factor.logDeterminant)
  );
}

/** Covariance of a block's readings with the shared errors uncertain as believed; `rows` as in the block. */
export function withShared(
  covariance: Float64Array,
  rows: readonly Float64Array[],
  shared: Float64Array,
): Float64Array {
  const n = rows.length;
  const whole = covariance.slice();
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      const [a, b] = [rows[i] as Float64Array, rows[j] as Float64Array];
      for (let p = 0; p < a.length; p++) {
        const ap = a[p] as number;
        if (ap === 0) continue;
        for (let q = 0; q < b.length; q++) sum += ap * (shared[p * a.length + q] as number) * (b[q] as number);
      }
      whole[i * n + j] = (whole[i * n + j] as number) + sum;
      if (i !== j) whole[j * n + i] = whole[i * n + j] as number;
    }
  }
  return whole;
}
