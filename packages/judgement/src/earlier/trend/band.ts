import { fitLine, type Line, type Sample } from "./line.ts";

/** ln of resistances no reading lies beyond: 1 Ω … 10^15 Ω for insulation, wide enough for an electrode. */
const BEYOND_LOW = Math.log(1e-3);
const BEYOND_HIGH = Math.log(1e16);

/** Ends of a band on the scale of the fit; −∞ and ∞ where the readings set none. */
export type Band = readonly [low: number, high: number];

/**
 * Where the next reading at `time` is expected: every value that, taken together with the readings, makes them less
 * likely by no more than `reach` standard deviations (the profile of the likelihood). With exact readings alone this is
 * the prediction interval of weighted regression, value ± reach·√(σ² + x′·cov·x).
 */
export function predictionBand(
  samples: readonly Sample[],
  line: Line,
  time: number,
  deviation: number,
  reach: number,
): Band {
  if (samples.every(({ bound }) => bound === "exact") && line.settled) {
    const half = reach * Math.sqrt(deviation ** 2 + varianceAt(samples, time));
    const centre = line.start + line.slope * time;
    return [centre - half, centre + half];
  }
  const allowed = line.deviance + reach ** 2;
  const deviance = (level: number) => fitLine([...samples, { time, level, deviation, bound: "exact" }]).deviance;
  const centre = line.settled ? line.start + line.slope * time : likeliest(samples, time, deviance);
  return [endOf(centre, BEYOND_LOW, deviance, allowed), endOf(centre, BEYOND_HIGH, deviance, allowed)];
}

/** Variance of the height of the line at a time, x′·(X′WX)⁻¹·x. */
function varianceAt(samples: readonly Sample[], time: number): number {
  let [w, wt] = [0, 0];
  for (const one of samples) {
    w += one.deviation ** -2;
    wt += one.time * one.deviation ** -2;
  }
  const middle = wt / w;
  const spread = samples.reduce((sum, one) => sum + ((one.time - middle) / one.deviation) ** 2, 0);
  return 1 / w + (time - middle) ** 2 / spread;
}

/** The band of the slope by the same rule. */
export function slopeBand(samples: readonly Sample[], line: Line, reach: number): Band {
  if (!line.settled) return [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const allowed = line.deviance + reach ** 2;
  const tilted = (slope: number) => levelFit(samples, slope);
  return [endOf(line.slope, line.slope - 40, tilted, allowed), endOf(line.slope, line.slope + 40, tilted, allowed)];
}

/** Least deviance of lines with a given slope: one unknown, found by a line through the same samples turned level. */
function levelFit(samples: readonly Sample[], slope: number): number {
  // All at one time: the slope of the fit plays no part there.
  return fitLine(samples.map((one) => ({ ...one, level: one.level - slope * one.time, time: 0 }))).deviance;
}

/** A level that goes with the readings as well as any, where no line is settled. */
function likeliest(samples: readonly Sample[], time: number, deviance: (level: number) => number): number {
  let best = Number.NaN;
  let least = Number.POSITIVE_INFINITY;
  const last = [...samples].sort((a, b) => Math.abs(a.time - time) - Math.abs(b.time - time))[0] as Sample;
  for (let k = -40; k <= 40; k++) {
    const level = last.level + k;
    const found = deviance(level);
    if (found < least - 1e-9) [best, least] = [level, found];
  }
  return best;
}

function endOf(from: number, to: number, deviance: (level: number) => number, allowed: number): number {
  if (deviance(to) <= allowed) return to > from ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  let [inside, outside] = [from, to];
  for (let i = 0; i < 60 && Math.abs(outside - inside) > 1e-7; i++) {
    const middle = (inside + outside) / 2;
    if (deviance(middle) <= allowed) inside = middle;
    else outside = middle;
  }
  return (inside + outside) / 2;
}
