import { chanceAtMost } from "./sum-of-errors.ts";
import type { Tape } from "./tape.ts";

/** A rectangular error reaches so many of its standard deviations. */
export const REACH = Math.sqrt(3);

/** Steps on the way to the limit; each is a computation of the check anew. */
const STEPS = 8;

/**
 * How far, in standard deviations of what is in hand, the straight line may lie beside the computation. Held against
 * Monte Carlo in outside/uncertainty.
 */
const BENT = 0.2;

/** Beyond so many standard deviations from the limit, being bent no longer matters. */
const NEAR = 2.5;

/** A cause with less than this part of the whole is not tried on its own. */
const SMALL = 0.05;

/** A largest value is taken as one and the same where it lies so many standard deviations ahead of the next. */
const CLEAR = 2;

/** What is in hand as a straight line in the causes of doubt, laid where it meets the limit. */
export interface Line {
  /** What is in hand at the expectations of all that may move. */
  readonly middle: number;
  /** What is in hand on the straight line at the expectations; differs from `middle` where the computation bends. */
  readonly onLine: number;
  /** What each cause adds per standard deviation, on the line. */
  readonly slopes: Float64Array;
  /** Combined standard uncertainty at the expectations (GUM 5.1.2). */
  readonly standard: number;
  /** The computation bends too much near the limit for a straight line, or chooses between values that are too close. */
  readonly curved: boolean;
}

/** The tangent at the expectations, for where it is plain without more on which side of the limit everything lies. */
export function tangentOf(tape: Tape, start: Float64Array, moves: readonly boolean[]): Line {
  tape.run(start);
  const slopes = moving(tape.gradient, moves);
  const [middle, standard] = [tape.difference, lengthOf(slopes)];
  const curved = !Number.isFinite(middle) || !Number.isFinite(standard) || tape.contested(CLEAR);
  return { middle, onLine: middle, slopes, standard, curved };
}

/**
 * Lays a straight line against a computation where it meets the limit (the first-order reliability method): there, and
 * not at the readings, it decides how probable it is that the limit is met. `start` holds the causes that stay where they
 * are; `moves` says which may move.
 */
export function lineOf(tape: Tape, start: Float64Array, moves: readonly boolean[]): Line {
  const tangent = tangentOf(tape, start, moves);
  if (tangent.curved || tangent.standard === 0) return tangent;
  const { middle, standard } = tangent;
  const at = start.slice();
  tape.run(at);
  towardsLimit(tape, at, start, moves);
  const slopes = moving(tape.gradient, moves);
  const size = lengthOf(slopes);
  if (!Number.isFinite(tape.difference) || !(size > 0)) return { ...tangent, curved: true };
  const onLine = tape.difference - along(slopes, at, start);
  const line = { middle, onLine, slopes, standard };
  const straight = alike(slopes, tangent.slopes, size);
  const bend = bendOf(tape, start, at, line);
  const bent = bend.beyond() || (!straight && bend.aside());
  if (straight || bent) return { ...line, curved: bent };
  return { ...line, onLine: onLine + bow(tape, at, slopes, size), curved: false };
}

/** Probability that what is in hand is not negative. */
export function chanceInHand({ onLine, slopes }: Line): number {
  return chanceAtMost(onLine, slopes);
}

/**
 * What is in hand with every cause at its end, to the worse (−1) or the better (1) side; NaN where a cause acts the other
 * way round there, so that the end is no end.
 */
export function atCorner(tape: Tape, start: Float64Array, slopes: Float64Array, side: -1 | 1): number {
  tape.run(start.map((fixed, i) => fixed + side * REACH * Math.sign(slopes[i] as number)));
  const turned = slopes.some((slope, i) => slope * (tape.gradient[i] as number) < 0);
  return turned ? Number.NaN : tape.difference;
}

/** Moves `at` to the likeliest place where nothing is in hand, as far as the errors reach. The tape has been run there. */
function towardsLimit(tape: Tape, at: Float64Array, start: Float64Array, moves: readonly boolean[]): void {
  const { gradient } = tape;
  for (let step = 0; step < STEPS; step++) {
    let [needed, square] = [-tape.difference, 0];
    for (let i = 0; i < at.length; i++) {
      if (moves[i] !== true) continue;
      const slope = gradient[i] as number;
      needed += slope * ((at[i] as number) - (start[i] as number));
      square += slope * slope;
    }
    if (!(square > 0) || !Number.isFinite(needed)) return;
    let moved = 0;
    for (let i = 0; i < at.length; i++) {
      if (moves[i] !== true) continue;
      const to = Math.max(-REACH, Math.min(REACH, (needed * (gradient[i] as number)) / square)) + (start[i] as number);
      moved = Math.max(moved, Math.abs(to - (at[i] as number)));
      at[i] = to;
    }
    if (moved < 1e-7) return;
    tape.run(at);
  }
}

/** Whether the computation leaves the line where it matters: beyond the readings, and aside at the ends of single causes. */
function bendOf(tape: Tape, start: Float64Array, at: Float64Array, { onLine, slopes }: Omit<Line, "curved">) {
  const size = lengthOf(slopes);
  const causes = slopes.reduce((count, slope) => count + (Math.abs(slope) > SMALL * size ? 1 : 0), 0);
  const single = causes === 1 || tape.uncertain === 1;
  const leaves = (point: Float64Array): boolean => {
    tape.run(point);
    const line = onLine + along(slopes, point, start);
    if (!Number.isFinite(tape.difference)) return true;
    if (Math.min(Math.abs(tape.difference), Math.abs(line)) > NEAR * size) return false;
    // With one cause, or one value, all that matters is where it crosses the limit.
    if (single) return tape.difference * line < 0 && Math.abs(tape.difference - line) > BENT * size;
    return Math.abs(tape.difference - line) > BENT * size;
  };
  return {
    beyond: () => leaves(start) || leaves(at.map((one, i) => 2 * (start[i] as number) - one)),
    aside: () =>
      slopes.some(
        (slope, i) =>
          Math.abs(slope) > SMALL * size && (leaves(moved(start, i, -REACH)) || leaves(moved(start, i, REACH))),
      ),
  };
}

/** Step for second differences, in standard deviations. */
const STEP = 0.5;

/**
 * How far the computation bows away from the line on average along the limit: half the sum of its second derivatives but
 * that across the limit (the leading term of the second-order reliability method). 0 where that is no number.
 */
function bow(tape: Tape, at: Float64Array, slopes: Float64Array, size: number): number {
  tape.run(at);
  const { difference } = tape;
  const second = (by: (i: number) => number): number => {
    tape.run(at.map((one, i) => one + STEP * by(i)));
    const ahead = tape.difference;
    tape.run(at.map((one, i) => one - STEP * by(i)));
    return (ahead + tape.difference - 2 * difference) / STEP ** 2;
  };
  let sum = -second((i) => (slopes[i] as number) / size);
  for (let k = 0; k < slopes.length; k++)
    if (Math.abs(slopes[k] as number) > SMALL * size) sum += second((i) => (i === k ? 1 : 0));
  return Number.isFinite(sum) ? sum / 2 : 0;
}

function moved(start: Float64Array, i: number, by: number): Float64Array {
  const point = start.slice();
  (point[i] as number) += by;
  return point;
}

function along(slopes: Float64Array, at: Float64Array, start: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < slopes.length; i++) sum += (slopes[i] as number) * ((at[i] as number) - (start[i] as number));
  return sum;
}

function alike(a: Float64Array, b: Float64Array, size: number): boolean {
  return a.every((slope, i) => Math.abs(slope - (b[i] as number)) <= 1e-9 * size);
}

function moving(slopes: Float64Array, moves: readonly boolean[]): Float64Array {
  return slopes.map((slope, i) => (moves[i] === true ? slope : 0));
}

function lengthOf(slopes: Float64Array): number {
  let square = 0;
  for (const slope of slopes) square += slope * slope;
  return Math.sqrt(square);
}
