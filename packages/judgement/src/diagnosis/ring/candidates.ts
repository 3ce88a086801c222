import { type Fit, fit, misfitOf, type Problem } from "./fit.ts";
import { LINE, OWN } from "./parameters.ts";
import { predict } from "./prediction.ts";
import type { Observed } from "./readings.ts";
import { CONDUCTORS, type Conductor, type Hypothesis, PAIRS, type PointState, type RingState } from "./ring-state.ts";

const NO_POINTS: readonly PointState[] = Object.freeze([]);

/** Interconnections of these lengths, as parts of the ring, are tried between every two of so many places. */
const TRIED_LENGTHS = [0.03, 0.12, 0.3];
const MOST_PLACES = 14;
const REFINED = 3;
/** Legs beyond this number are tried by their misfit with the parameters of the middle leg, the best refined. */
const ALL_REFINED = 16;

/** Conductors read end to end that are open. */
function openConductors({ observed }: Problem): readonly Conductor[] {
  return CONDUCTORS.filter((_, i) => observed[i]?.bound === "above");
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
  if (open.length === 3) found.push(fitted(problem, { kind: "crossed-rings" }));
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
  const startOf = (leg: number) => (before === undefined ? undefined : extended(problem, state(leg), before));
  if (legs <= ALL_REFINED && before === undefined) {
    return Array.from({ length: legs }, (_, leg) => fitted(problem, state(leg), startOf(leg)));
  }
  const middle = fitted(problem, state(legs >> 1), startOf(legs >> 1));
  const tried = Array.from({ length: legs }, (_, leg) => fitted(problem, state(leg), middle.values, 0));
  const best = [...tried].sort((a, b) => a.cost - b.cost).slice(0, REFINED);
  return tried.map((one) => (best.includes(one) ? fit(problem, one.hypothesis, one.values) : one));
}

function extended(problem: Problem, ring: RingState, before: readonly number[]): Float64Array {
  const count = problem.input.points.length;
  const places = Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
  return Float64Array.from([...before, ...(ring.kind === "same-ends-joined" ? [] : places)]);
}

function near(problem: Problem, ring: RingState, sound: Fit, sizes: readonly number[]): readonly Fit[] {
  return [fitted(problem, ring, Float64Array.from([...own(sound), ...sizes, ...sound.values.slice(OWN)]))];
}

/** Interconnections between every two places, the scale of the ring set to the readings, the best few refined. */
function interconnections(problem: Problem, sound: Fit): readonly Fit[] {
  const hypothesis: Hypothesis = { ring: { kind: "interconnection" }, points: NO_POINTS };
  const count = problem.input.points.length;
  const stride = Math.max(1, Math.ceil(count / MOST_PLACES));
  const places = Array.from({ length: count }, (_, i) => (i + 1) / (count + 1)).filter((_, i) => i % stride === 0);
  const values = Float64Array.from([...own(sound), 0, 0, 0, ...extended(problem, hypothesis.ring, []).values()]);
  const work = new Float64Array(problem.asked.length);
  const tried: { readonly misfit: number; readonly start: Float64Array }[] = [];
  for (const p of places)
    for (const q of places) {
      if (q <= p) continue;
      for (const length of TRIED_LENGTHS) {
        values[LINE] = sound.values[LINE] as number;
        values.set([p, q, length], OWN);
        predict(hypothesis, values, problem.asked, work);
        const gain = bestGain(problem.observed, work);
        const start = values.slice();
        start[LINE] = (values[LINE] as number) + Math.log(gain);
        tried.push({
          misfit: misfitOf(
            problem.observed,
            work.map((ohms) => ohms * gain),
          ),
          start,
        });
      }
    }
  tried.sort((a, b) => a.misfit - b.misfit);
  return tried.slice(0, REFINED).map(({ start }) => fitted(problem, hypothesis.ring, start));
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
  const plain: Hypothesis = { ring, points: NO_POINTS };
  const from = start ?? fit(problem, plain, undefined, 0).values;
  const expected = new Float64Array(problem.asked.length);
  predict(plain, from, problem.asked, expected);
  return fit(problem, { ring, points: openPoints(problem, expected).map(([first]) => first) }, from, most);
}

/** For each point with an open reading that should have a value: the states that explain it, commonest first. */
export function openPoints(
  problem: Problem,
  expected: Float64Array,
): readonly (readonly [PointState, ...PointState[]])[] {
  const found: (readonly [PointState, ...PointState[]])[] = [];
  for (let point = 0; point < problem.input.points.length; point++) {
    const seen = { "line-neutral": "none", "line-cpc": "none", "neutral-cpc": "none" };
    for (const [i, { asked, bound, shown }] of problem.observed.entries()) {
      if (asked.point !== point) continue;
      const isClosed = (expected[i] as number) < shown;
      seen[asked.pair] = bound === "above" ? (isClosed ? "open" : "none") : "closed";
    }
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
