import { normalCdf, normalDensity } from "@good-grounds/measurement";

/** A reading on the scale of the fit: time in years, ln R, its standard deviation; `above`: the true value is at least this. */
export interface Sample {
  readonly time: number;
  readonly level: number;
  readonly deviation: number;
  readonly bound: "exact" | "above" | "below";
}

/** level = start + slope·time, at the greatest likelihood; and how unlikely the samples are under it (−2 ln L, no constants). */
export interface Line {
  readonly start: number;
  readonly slope: number;
  readonly deviance: number;
  /** False where the samples allow ever steeper lines and none is the likeliest. */
  readonly settled: boolean;
}

const MOST_STEPS = 200;
/** A line this much steeper than any reading could show is no line: the fit runs away. e^40 per year. */
const RUNAWAY = 40;

/**
 * Straight line through samples with known deviations, those beyond the end of a display as what they are: at least so
 * much. The deviance is convex, so Newton's steps with halving find its least value. Without such samples this is
 * weighted least squares.
 */
export function fitLine(samples: readonly Sample[]): Line {
  const middle = samples.reduce((sum, { time }) => sum + time, 0) / samples.length;
  let [start, slope] = guess(samples, middle);
  if (samples.every(({ bound }) => bound === "exact")) {
    const { deviance } = devianceOf(samples, middle, start, slope);
    return { start: start - slope * middle, slope, deviance, settled: determined(samples) };
  }
  let now = devianceOf(samples, middle, start, slope);
  for (let step = 0; step < MOST_STEPS; step++) {
    const [ds, dt] = now.solve;
    if (!Number.isFinite(ds) || !Number.isFinite(dt)) break;
    let size = 1;
    let next = devianceOf(samples, middle, start - ds, slope - dt);
    while (!(next.deviance <= now.deviance) && size > 1e-12) {
      size /= 2;
      next = devianceOf(samples, middle, start - size * ds, slope - size * dt);
    }
    const gained = now.deviance - next.deviance;
    if (!(gained >= 0)) break;
    [start, slope, now] = [start - size * ds, slope - size * dt, next];
    if (gained <= 1e-13 * (1 + Math.abs(now.deviance)) && Math.hypot(ds, dt) < 1e-7) break;
    if (Math.abs(slope) > RUNAWAY || Math.abs(start) > 10 * RUNAWAY) break;
  }
  const settled = Math.abs(slope) <= RUNAWAY && determined(samples);
  return { start: start - slope * middle, slope, deviance: now.deviance, settled };
}

/** Two exact samples at different times settle a line; bounds alone or one exact sample leave its slope open. */
function determined(samples: readonly Sample[]): boolean {
  const times = new Set(samples.filter(({ bound }) => bound === "exact").map(({ time }) => time));
  return times.size >= 2;
}

function guess(samples: readonly Sample[], middle: number): [start: number, slope: number] {
  let [w, wt, wtt, wy, wty] = [0, 0, 0, 0, 0];
  for (const { time, level, deviation } of samples) {
    const weight = deviation ** -2;
    const t = time - middle;
    w += weight;
    wt += weight * t;
    wtt += weight * t * t;
    wy += weight * level;
    wty += weight * t * level;
  }
  const determinant = w * wtt - wt * wt;
  if (!(determinant > 1e-12 * w * Math.max(wtt, 1e-300))) return [wy / w, 0];
  return [(wy * wtt - wty * wt) / determinant, (w * wty - wt * wy) / determinant];
}

/** Deviance, and Newton's step for it: Hessian⁻¹ · gradient. */
function devianceOf(samples: readonly Sample[], middle: number, start: number, slope: number) {
  let [deviance, gs, gt, hss, hst, htt] = [0, 0, 0, 0, 0, 0];
  for (const { time, level, deviation, bound } of samples) {
    const t = time - middle;
    const z = (start + slope * t - level) / deviation;
    const [value, first, second] = bound === "exact" ? [z * z, 2 * z, 2] : oneSided(bound === "above" ? z : -z);
    const [d1, d2] = [(bound === "below" ? -first : first) / deviation, second / deviation ** 2];
    deviance += value;
    gs += d1;
    gt += d1 * t;
    hss += d2;
    hst += d2 * t;
    htt += d2 * t * t;
  }
  // A grain on the diagonal keeps the step finite where bounds alone leave a direction flat.
  const grain = 1e-12 * (hss + htt) + 1e-300;
  const [a, c] = [hss + grain, htt + grain];
  const determinant = a * c - hst * hst;
  return { deviance, solve: [(c * gs - hst * gt) / determinant, (a * gt - hst * gs) / determinant] as const };
}

/** −2 ln Φ(z) with its first and second derivative. */
function oneSided(z: number): readonly [number, number, number] {
  if (z < -30) {
    // Φ(z) ≈ φ(z)/|z|: the ratio φ/Φ is |z| with a correction of 1/|z|.
    const ratio = -z - 1 / z;
    return [z * z + 2 * Math.log(-z) + Math.log(2 * Math.PI), -2 * ratio, 2 * ratio * (ratio + z)];
  }
  const chance = normalCdf(z);
  const ratio = normalDensity(z) / chance;
  return [-2 * Math.log(chance), -2 * ratio, 2 * ratio * (ratio + z)];
}
