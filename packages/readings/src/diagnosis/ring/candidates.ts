import { type Fit, fit, misfitOf, type Problem } from "./fit.ts";
import { LINE, OWN, positionsAt } from "./parameters.ts";
import { predict } from "./prediction.ts";
import type { Observed } from "./readings.ts";
import { CONDUCTORS, type Conductor, type Hypothesis, PAIRS, type PointState, type RingState } from "./ring-state.ts";

const NO_POINTS: readonly PointState[] = Object.freeze([]);

/** An interconnection is tried about so many runs of points, with cables and shares of the ring of these parts of it. */
const TRIED_RUNS = 4;
const TRIED_LENGTHS = [0.03, 0.15];
const TRIED_SHARES = [0.3, 0.5, 0.7];
const REFINED = 4;
const MOST_REFINING = 5;
/** Legs beyond this number are tried by their misfit with the parameters of the middle leg, the best refined. */
const ALL_REFINED = 16;

/** A display that ends below this, in Ω, does not say that a conductor is open. */
const NOT_OPEN = 5;

/** Conductors read end to end that are open. */
function openConductors({ observed }: Problem): readonly Conductor[] {
  return CONDUCTORS.filter((_, i) => observed[i]?.bound === "above" && (observed[i]?.shown ?? 0) > NOT_OPEN);
}

/** Sizes of the protective conductor whose ratio lies further from r2 over r1 and over rn, as a logarithm, are not tried. */
const NOT_THE_SIZE = 0.25;

/** The problem with every other size of the protective conductor that its readings end to end come near. */
export function withOtherSizes(problem: Problem): readonly Problem[] {
  const { r1, rn, r2, cpcSizes = [] } = problem.input;
  if (r2.bound !== "exact" || !(r2.shown > 0)) return [];
  const read = [r1, rn].filter(({ bound, shown }) => bound === "exact" && shown > 0);
  return cpcSizes
    .filter(({ ratio }) => read.some(({ shown }) => Math.abs(Math.log(r2.shown / shown / ratio.value)) < NOT_THE_SIZE))
    .map(({ size }) => ({ ...problem, cpc: size }));
}

/**
 * Every explanation of the ring itself that the end-to-end readings leave, each fitted to all readings. Points whose
 * readings are open have the state that explains it; the other states that would are among the answers as well.
 */
export function ringCandidates(problem: Problem): readonly Fit[] {
  const open = openConductors(problem);
  const legs = problem.input.orderKnown ? problem.input.points.length + 1 : 1;
  if (open.length > 0) return openCandidates(problem, open, legs);
  const sound = fitted(problem, { kind: "sound" });
  const found = [sound];
  for (const readings of ["all", "r1", "rn", "r2"] as const) {
    found.push(...near(problem, { kind: "leads-not-nulled", readings }, sound, [0.15]));
  }
  const crossed = PAIRS.filter((pair) => problem.asked.some((one) => one.point >= 0 && one.pair === pair));
  const sets = crossed.length > 1 ? [...crossed.map((pair) => [pair]), crossed] : [crossed];
  for (const pairs of sets) if (pairs.length > 0) found.push(fitted(problem, { kind: "same-ends-joined", pairs }));
  for (const [i, conductor] of CONDUCTORS.entries()) {
    const size = Math.max(0.05, Math.min(0.5, problem.observed[i]?.shown ?? 0.1) / 2);
    const state = (leg: number): RingState => ({ kind: "joint", conductor, leg });
    // Neutral is read against line only, which are alike: the legs do not differ.
    found.push(...legCandidates(problem, state, legs, [...own(sound), size]));
  }
  found.push(...interconnections(problem, sound));
  return found;
}

function openCandidates(problem: Problem, open: readonly Conductor[], legs: number): readonly Fit[] {
  const found = legCandidates(problem, (leg) => ({ kind: "open", conductors: open, leg }), legs);
  const [a, b] = open;
  const crossed = open.length === 2 ? PAIRS.find((pair) => pair === `${a}-${b}`) : undefined;
  if (crossed !== undefined) {
    found.push(...legCandidates(problem, (leg) => ({ kind: "crossed-in-leg", pair: crossed, leg }), legs));
  }
  if (open.length === 3 && problem.input.otherRing !== false) found.push(fitted(problem, { kind: "crossed-rings" }));
  return found;
}

const own = ({ values }: Fit): readonly number[] => [...values.slice(0, OWN)];

/** One fit for each leg the state may lie in. */
function legCandidates(
  problem: Problem,
  state: (leg: number) => RingState,
  legs: number,
  before?: readonly number[],
): Fit[] {
  if (legs <= ALL_REFINED && before === undefined) {
    return Array.from({ length: legs }, (_, leg) => fitted(problem, state(leg)));
  }
  const start = before === undefined ? undefined : extended(problem, before);
  const middle = fitted(problem, state(legs >> 1), start);
  // Distances fitted to a fault in the middle lead astray; sizes do not.
  const from = positionsAt(middle.hypothesis);
  const sizes = extended(problem, [...middle.values.slice(0, from)]);
  const tried = Array.from({ length: legs }, (_, leg) => fitted(problem, state(leg), sizes, 0));
  const best = [...tried].sort((a, b) => a.cost - b.cost).slice(0, REFINED);
  return tried.map((one) => (best.includes(one) ? fit(problem, one.hypothesis, one.values, MOST_REFINING) : one));
}

function extended(problem: Problem, before: readonly number[]): Float64Array {
  const count = problem.input.points.length;
  return Float64Array.from([...before, ...places(count)]);
}

function near(problem: Problem, ring: RingState, sound: Fit, sizes: readonly number[]): readonly Fit[] {
  return [fitted(problem, ring, Float64Array.from([...own(sound), ...sizes, ...sound.values.slice(OWN)]))];
}

/**
 * Interconnections. Their ends lie about a run of points that read high; the runs that stand out most are tried with
 * several lengths of cable and shares of the ring, the scale of the ring set to the readings, and the best start of each
 * is refined.
 */
function interconnections(problem: Problem, sound: Fit): readonly Fit[] {
  const hypothesis = plain(problem, { kind: "interconnection" });
  const work = new Float64Array(problem.asked.length);
  return highRuns(problem).map((run) => {
    let best: { readonly misfit: number; readonly start: Float64Array } | undefined;
    for (const share of [0, ...TRIED_SHARES])
      for (const length of TRIED_LENGTHS) {
        const start = Float64Array.from([...own(sound), ...about(run, share, length, problem.input.points.length)]);
        predict(hypothesis, start, problem.asked, work);
        const gain = bestGain(problem.observed, work);
        start[LINE] = (start[LINE] as number) + Math.log(gain);
        const misfit = misfitOf(
          problem.observed,
          work.map((ohms) => ohms * gain),
        );
        if (best === undefined || misfit < best.misfit) best = { misfit, start };
      }
    return fitted(problem, hypothesis.ring, best?.start);
  });
}

/** First and last point of a run. */
type Run = readonly [first: number, last: number];

/** Runs of points that read higher than the others, by how far they stand out. */
function highRuns({ observed, input }: Problem): readonly Run[] {
  const count = input.points.length;
  const height = new Float64Array(count);
  const known = new Uint8Array(count);
  for (const { asked, shown, bound, deviation } of observed) {
    if (asked.point < 0 || bound === "above") continue;
    height[asked.point] = (height[asked.point] as number) + shown / deviation;
    known[asked.point] = 1;
  }
  const runs: { readonly run: Run; readonly contrast: number }[] = [];
  const sum = (from: number, to: number) => {
    let [total, points] = [0, 0];
    for (let i = from; i < to; i++) {
      total += height[i] as number;
      points += known[i] as number;
    }
    return { total, points };
  };
  const all = sum(0, count);
  for (let first = 0; first < count; first++)
    for (let last = first; last < count; last++) {
      const inside = sum(first, last + 1);
      const outside = all.points - inside.points;
      if (inside.points === 0 || outside === 0) continue;
      const apart = inside.total / inside.points - (all.total - inside.total) / outside;
      runs.push({ run: [first, last], contrast: apart / Math.sqrt(1 / inside.points + 1 / outside) });
    }
  return runs
    .sort((a, b) => b.contrast - a.contrast)
    .slice(0, TRIED_RUNS)
    .map(({ run }) => run);
}

/** Places of an interconnection about a run, and of the points, for a share of the ring between its ends; 0: even distances. */
function about([first, last]: Run, share: number, length: number, count: number): readonly number[] {
  const even = (i: number) => (i + 1) / (count + 1);
  if (share === 0) return [even(first) - 0.6 / (count + 1), even(last) + 0.6 / (count + 1), length, ...places(count)];
  const before = ((1 - share) * (first + 0.5)) / (count - (last - first));
  const at = Array.from({ length: count }, (_, i) => {
    if (i < first) return (before * (i + 1)) / (first + 0.5);
    if (i <= last) return before + (share * (i - first + 1)) / (last - first + 2);
    return before + share + ((1 - share - before) * (i - last - 0.5)) / (count - last - 0.5);
  });
  return [before, before + share, length, ...at];
}

function places(count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
}

function bestGain(observed: readonly Observed[], expected: Float64Array): number {
  let [across, square] = [0, 0];
  for (const [i, { shown, deviation, bound }] of observed.entries()) {
    const ohms = expected[i] as number;
    if (bound === "above" || ohms === Number.POSITIVE_INFINITY) continue;
    across += (shown * ohms) / deviation ** 2;
    square += (ohms / deviation) ** 2;
  }
  return square > 0 && across > 0 ? across / square : 1;
}

/** The fit of a state of the ring, with states of the points where readings are open that the ring does not make open. */
function fitted(problem: Problem, ring: RingState, start?: Float64Array, most?: number): Fit {
  const hypothesis = plain(problem, ring);
  const from = start ?? fit(problem, hypothesis, undefined, 0).values;
  const expected = new Float64Array(problem.asked.length);
  predict(hypothesis, from, problem.asked, expected);
  return fit(problem, { ...hypothesis, points: openPoints(problem, expected).map(([first]) => first) }, from, most);
}

function plain({ cpc }: Problem, ring: RingState): Hypothesis {
  return { ring, ...(cpc === undefined ? {} : { cpc }), points: NO_POINTS };
}

/** For each point with an open reading that should have a value: the states that explain it, commonest first. */
export function openPoints(
  problem: Problem,
  expected: Float64Array,
): readonly (readonly [PointState, ...PointState[]])[] {
  const found: (readonly [PointState, ...PointState[]])[] = [];
  const all = problem.input.points.map(() => ({ "line-neutral": "none", "line-cpc": "none", "neutral-cpc": "none" }));
  for (const [i, { asked, bound, shown }] of problem.observed.entries()) {
    const seen = all[asked.point];
    if (seen === undefined) continue;
    const isClosed = (expected[i] as number) < shown;
    seen[asked.pair] = bound === "above" ? (isClosed ? "open" : "none") : "closed";
  }
  for (const [point, seen] of all.entries()) {
    const states = statesFor(point, seen["line-neutral"], seen["line-cpc"]);
    const [first, ...rest] = states;
    if (first !== undefined) found.push([first, ...rest]);
  }
  return found;
}

function statesFor(point: number, lineNeutral: string, lineCpc: string): readonly PointState[] {
  if (lineNeutral !== "open" && lineCpc !== "open") return [];
  const swapped = (pair: (typeof PAIRS)[number]): PointState => ({ kind: "swapped", point, pair });
  const off = (conductor: Conductor): PointState => ({ kind: "off", point, conductor });
  const both = [swapped("neutral-cpc"), off("line")];
  const alone = lineNeutral === "open" ? [swapped("line-cpc"), off("neutral")] : [swapped("line-neutral"), off("cpc")];
  if (lineNeutral === "open" && lineCpc === "open") return both;
  // The other reading was not taken, or says nothing.
  if (lineNeutral === "none" || lineCpc === "none") return [...alone, ...both];
  return alone;
}
