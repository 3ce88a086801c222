import { normalCdf, normalDensity } from "@good-grounds/measurement";

/** Beyond so many standard deviations of the normal part nothing is left. */
const NOTHING_LEFT = 9;

/** A rectangle this much narrower than the rest is not told from a normal part of the same variance. */
const NARROW = 1e-4;

/**
 * Chance that a sum of independent errors lies at or below `at`. Each error is rectangular about zero and given by its
 * standard deviation. The two widest are taken as they are, the rest as one normal part of their joint variance: exact
 * for one error and for two, and by the central limit close for more (within 0.0033 for three equal ones).
 */
export function chanceAtMost(at: number, deviations: ArrayLike<number>): number {
  const { first, second, rest } = divided(deviations);
  const [h1, h2] = [first * Math.sqrt(3), second * Math.sqrt(3)];
  const wide = h1 + h2 + NOTHING_LEFT * rest;
  if (at >= wide) return 1;
  if (at <= -wide) return 0;
  if (h1 === 0) return normalCdf(at / rest);
  if (h2 === 0) return within((once(at + h1, rest) - once(at - h1, rest)) / (2 * h1));
  const corners =
    twice(at + h1 + h2, rest) - twice(at + h1 - h2, rest) - twice(at - h1 + h2, rest) + twice(at - h1 - h2, rest);
  return within(corners / (4 * h1 * h2));
}

function divided(deviations: ArrayLike<number>) {
  let [first, second, variance] = [0, 0, 0];
  for (let i = 0; i < deviations.length; i++) {
    const one = Math.abs(deviations[i] as number);
    if (one > first) {
      variance += second ** 2;
      [first, second] = [one, first];
    } else if (one > second) {
      variance += second ** 2;
      second = one;
    } else variance += one ** 2;
  }
  const wide = Math.max(first, Math.sqrt(variance));
  if (second > 0 && second < NARROW * wide) [variance, second] = [variance + second ** 2, 0];
  if (first > 0 && first < NARROW * wide) [variance, first] = [variance + first ** 2, 0];
  return { first, second, rest: Math.sqrt(variance) };
}

/** The normal distribution function of deviation `rest` summed up once from below; for `rest` 0 that of a step. */
function once(x: number, rest: number): number {
  if (rest === 0) return Math.max(0, x);
  const z = x / rest;
  if (z > NOTHING_LEFT) return x;
  if (z < -NOTHING_LEFT) return 0;
  return rest * (z * normalCdf(z) + normalDensity(z));
}

/** The same summed up twice. */
function twice(x: number, rest: number): number {
  if (rest === 0) return Math.max(0, x) ** 2 / 2;
  const z = x / rest;
  if (z > NOTHING_LEFT) return (x * x + rest * rest) / 2;
  if (z < -NOTHING_LEFT) return 0;
  return (rest * rest * ((z * z + 1) * normalCdf(z) + z * normalDensity(z))) / 2;
}

function within(chance: number): number {
  return Math.min(1, Math.max(0, chance));
}
