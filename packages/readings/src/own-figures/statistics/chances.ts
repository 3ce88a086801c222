import { gammaAbove } from "./gamma.ts";

/** The chance that chi-squared with so many degrees of freedom is at least `value`. */
export function chiSquaredAbove(value: number, freedom: number): number {
  return gammaAbove(freedom / 2, value / 2);
}

/** The chance that a normal error of this deviation stays within ±`half`. */
export function withinNormal(half: number, deviation: number): number {
  if (!(deviation > 0)) return 1;
  return 1 - gammaAbove(0.5, (half / deviation) ** 2 / 2);
}

/**
 * The greatest chance that two figures with a normal difference of this deviation show the same digits: where their true
 * values are equal.
 */
export function sameDigits(deviation: number, resolution: number): number {
  return withinNormal(resolution / 2, deviation);
}

/** Events up to which counts are built up exactly; the work grows with their square. */
const MOST_EXACT = 2000;

/**
 * The chance that at least `least` of independent events with these chances happen. Exact up to 2,000 events, by building
 * up the counts; beyond that Hoeffding's bound from above, exp(−n·D), with D the divergence of the part asked for from the
 * mean chance.
 */
export function atLeastOf(chances: readonly number[], least: number): number {
  if (chances.length > MOST_EXACT) return bound(chances, least);
  const count = new Float64Array(chances.length + 1);
  count[0] = 1;
  for (const [n, chance] of chances.entries()) {
    for (let k = n + 1; k >= 0; k--) {
      count[k] = (count[k] as number) * (1 - chance) + (k > 0 ? (count[k - 1] as number) * chance : 0);
    }
  }
  let sum = 0;
  for (let k = chances.length; k >= least; k--) sum += count[k] as number;
  return Math.min(1, sum);
}

function bound(chances: readonly number[], least: number): number {
  const n = chances.length;
  const mean = chances.reduce((sum, chance) => sum + chance, 0) / n;
  const part = least / n;
  if (part <= mean) return 1;
  if (mean === 0 || part > 1) return 0;
  const missed = part === 1 ? 0 : (1 - part) * Math.log((1 - part) / (1 - mean));
  return Math.exp(-n * (part * Math.log(part / mean) + missed));
}

/**
 * A bound on the chance that some `same` of `all` independent figures show one value, where no value is more likely than
 * `most`: C(all, same) · most^(same − 1). Sum over the values of p^same is at most most^(same − 1).
 */
export function someAlike(same: number, all: number, most: number): number {
  if (same < 2) return 1;
  let log = (same - 1) * Math.log(most);
  for (let i = 0; i < same; i++) log += Math.log((all - i) / (same - i));
  return Math.min(1, Math.exp(log));
}

/** ln of the normal density. */
export function logNormal(value: number, mean: number, deviation: number): number {
  const z = (value - mean) / deviation;
  return -0.5 * z * z - Math.log(deviation) - 0.5 * Math.log(2 * Math.PI);
}

/** ln(eᵃ + eᵇ) without overflow. */
export function logSum(a: number, b: number): number {
  const [high, low] = a > b ? [a, b] : [b, a];
  return high === Number.NEGATIVE_INFINITY ? high : high + Math.log1p(Math.exp(low - high));
}
