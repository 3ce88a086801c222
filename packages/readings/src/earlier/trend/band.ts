import { fitLine, type Line, type Sample } from "./line.ts";

/** Further from the line than this, on the scale of ln R, is without end: a factor of 10^35. */
const WITHOUT_END = 80;

/** Slopes are sought within so much of the line's own, per year on the scale of ln R, and first at this distance. */
const STEEPEST = 40;
const STEP = 0.1;

/** Ends are sought to so much of ln R, a millionth of the resistance. */
const CLOSE = 1e-6;

/** Ends of a band on the scale of the fit; −∞ and ∞ where the readings set none. */
export type Band = readonly [low: number, high: number];

/**
 * Where the next reading at `time` is expected: every value that, taken together with the readings, makes them less
 * likely by no more than `reach` standard deviations (the profile of the likelihood). Only of a line that is settled. With exact readings alone this is
 * the prediction interval of weighted regression, value ± reach·√(σ² + x′·cov·x).
 */
export function predictionBand(
  samples: readonly Sample[],
  line: Line,
  time: number,
  deviation: number,
  reach: number,
): Band {
  const centre = line.start + line.slope * time;
  if (samples.every(({ bound }) => bound === "exact")) {
    const half = reach * Math.sqrt(deviation ** 2 + varianceAt(samples, time));
    return [centre - half, centre + half];
  }
  const deviance = (level: number) => fitLine([...samples, { time, level, deviation, bound: "exact" }]).deviance;

  const first = reach * deviation;
  return [
    endOf(centre, centre - WITHOUT_END, first, deviance, line.deviance, reach),
    endOf(centre, centre + WITHOUT_END, first, deviance, line.deviance, reach),
  ];
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
  const tilted = (slope: number) => levelFit(samples, slope);
  const least = line.deviance;
  return [
    endOf(line.slope, line.slope - STEEPEST, STEP, tilted, least, reach),
    endOf(line.slope, line.slope + STEEPEST, STEP, tilted, least, reach),
  ];
}

/** Least deviance of lines with a given slope: one unknown, found by a line through the same samples turned level. */
function levelFit(samples: readonly Sample[], slope: number): number {
  // All at one time: the slope of the fit plays no part there.
  return fitLine(samples.map((one) => ({ ...one, level: one.level - slope * one.time, time: 0 }))).deviance;
}

/**
 * Where the deviance has risen from `least` by reach², from `from` in the direction of `to`; without end where it has not
 * at `to`. √(deviance − least) is nearly straight, so that false position (Illinois) needs few steps.
 */
function endOf(
  from: number,
  to: number,
  first: number,
  deviance: (at: number) => number,
  least: number,
  reach: number,
) {
  const beyond = (at: number) => Math.sqrt(Math.max(0, deviance(at) - least)) - reach;
  const direction = Math.sign(to - from);
  let [inside, low] = [from, -reach];
  let [outside, high] = [from, -reach];
  for (let step = first; high < 0; step *= 2) {
    if (Math.abs(outside - from) >= Math.abs(to - from)) return direction * Number.POSITIVE_INFINITY;
    [inside, low] = [outside, high];
    outside = from + direction * Math.min(step, Math.abs(to - from));
    high = beyond(outside);
  }
  for (let i = 0; i < 60 && Math.abs(outside - inside) > CLOSE; i++) {
    const at = outside - (high * (outside - inside)) / (high - low);
    const found = beyond(at);
    if (Math.abs(found) < CLOSE) return at;
    if (found > 0) {
      [outside, high] = [at, found];
      low /= 2;
    } else {
      [inside, low] = [at, found];
      high /= 2;
    }
  }
  return (inside + outside) / 2;
}
