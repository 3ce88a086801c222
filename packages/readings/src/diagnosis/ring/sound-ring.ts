import { substitute } from "../../networks/cholesky.ts";
import { type Fit, fit, problemOf } from "./fit.ts";
import { OWN, predict, SOUND, shownFor } from "./hypothesis.ts";
import { type Observed, observedOf, type RingInput } from "./readings.ts";

/** What a reading would be on a sound ring, Ω, in the middle 95 %. */
export interface SoundReading {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** How far the reading lies from it, in deviations; infinite where one is open and the other is not. */
  readonly apart: number;
}

/** A sound ring leaves a misfit of about one for each reading; one that is far from it is looked at in full. */
const WORTH_A_LOOK = 1;
/** The two readings of one point together; above it the point itself may be at fault. */
const POINT_STANDS_OUT = 9;
/** An end-to-end reading, or the offset of the meter, further off than this in squares of deviations. */
const MOST_PRIOR = 4;

/**
 * Whether a ring is as plainly sound as readings can show: a sound ring accounts for them as well as chance would have
 * it, no point stands out and nothing known beforehand is strained. What is looked for then cannot be worth its odds.
 */
export function isPlainlySound(input: RingInput): boolean {
  const observed = observedOf(input);
  if (observed.some(({ bound }) => bound === "above")) return false;
  const { misfit, cost, expected } = fit(problemOf(input, observed), SOUND);
  if (misfit > WORTH_A_LOOK * observed.length || cost - misfit > MOST_PRIOR) return false;
  const points = new Float64Array(input.points.length);
  for (const [i, { asked, shown, deviation }] of observed.entries()) {
    const square = ((shown - (expected[i] as number)) / deviation) ** 2;
    if (asked.point < 0 ? square > MOST_PRIOR : square > POINT_STANDS_OUT) return false;
    if (asked.point >= 0) points[asked.point] = (points[asked.point] as number) + square;
  }
  return points.every((square) => square <= POINT_STANDS_OUT);
}

/**
 * What each reading would be were the ring sound, by the others: a point's by the readings end to end, an end-to-end
 * reading by those of the other two conductors. Undefined where the others say nothing, in the order of the readings.
 */
export function soundReadings(input: RingInput): readonly (SoundReading | undefined)[] {
  const observed = observedOf(input);
  const ends = observed.filter(({ asked, bound }) => asked.point < 0 && bound !== "above");
  const byEnds = ends.length === 0 ? undefined : fit(problemOf(input, ends), SOUND);
  // The error of a reading that is open says nothing of what a closed one would have.
  const closed = Math.max(...ends.map(({ deviation }) => deviation));
  return observed.map((read) => {
    const one = read.bound === "above" ? { ...read, deviation: closed } : read;
    if (one.asked.point >= 0) return byEnds === undefined ? undefined : soundReading(byEnds, one);
    const others = ends.filter(({ asked }) => asked.conductor !== one.asked.conductor);
    return others.length === 0 ? undefined : soundReading(fit(problemOf(input, others), SOUND), one);
  });
}

const STEP = 1e-5;
const MIDDLE_95 = 1.96;

/** A reading by a fit to others, with the doubt of the fit and the reading's own. */
function soundReading({ values, factor }: Fit, { asked, shown, bound, deviation }: Observed): SoundReading {
  const at = (parameters: Float64Array) => {
    const out = new Float64Array(1);
    predict(SOUND, parameters, [asked], out);
    return shownFor(out[0] as number, parameters);
  };
  const value = at(values);
  const slope = Float64Array.from(values, (own, j) => {
    // Of the places only that of the point read matters.
    if (j >= OWN && j !== OWN + asked.point) return 0;
    const moved = values.slice();
    moved[j] = own + STEP;
    return (at(moved) - value) / STEP;
  });
  const solved = slope.slice();
  substitute(factor, values.length, solved);
  const variance = slope.reduce((sum, one, j) => sum + one * (solved[j] as number), 0);
  const spread = Math.hypot(Math.sqrt(Math.max(0, variance)), deviation);
  return {
    value,
    low: Math.max(0, value - MIDDLE_95 * spread),
    high: value + MIDDLE_95 * spread,
    apart: bound === "above" ? Number.POSITIVE_INFINITY : Math.abs(shown - value) / spread,
  };
}
