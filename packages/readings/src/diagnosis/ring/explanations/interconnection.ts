import { CONDUCTORS } from "../asked.ts";
import type { Around, Explanation, Tried } from "../explanation.ts";
import type { Banded, Fault, RingPlace, Size } from "../fault.ts";
import { misfitOf, type Problem } from "../fit.ts";
import { OWN, positionsAt, predict, SOUND } from "../hypothesis.ts";
import type { Observed } from "../readings.ts";

export interface InterconnectionSaid {
  readonly kind: "interconnection";
  readonly from: RingPlace | undefined;
  readonly to: RingPlace | undefined;
  /** Length of the cable between the two places, m; undefined where the resistance per metre is not known. */
  readonly metres: Banded | undefined;
}

const COMMON = 0.03;
/** Where it begins and ends, and the length of its cable, by parts of the ring. */
const SIZES: readonly Size[] = [
  { value: 0.3, deviation: 0.35, low: 0.002, high: 0.97 },
  { value: 0.7, deviation: 0.35, low: 0.022, high: 0.998 },
  { value: 0.15, deviation: 0.3, low: 1e-4, high: 3 },
];
/** The least between its ends, by parts of the ring. */
const APART = 0.02;

/** It is tried about so many runs of points, with cables and shares of the ring of these parts of it. */
const TRIED_RUNS = 4;
/** Runs that stand out by less than this part of the one that does most are not tried. */
const NEAR_MOST = 0.6;
const TRIED_LENGTHS = [0.03, 0.15];
const TRIED_SHARES = [0, 0.3, 0.5, 0.7];

/** A cable of all three conductors from one place of the ring to another. */
export const BRIDGED: Fault<InterconnectionSaid> = {
  key: "interconnection",
  common: COMMON,
  sizes: SIZES,
  bears(model, values, at) {
    const length = values[at + 2] as number;
    model.bridge(
      values[at] as number,
      values[at + 1] as number,
      CONDUCTORS.map((_, c) => length * (model.whole[c] as number)),
    );
  },
  hold(values, at) {
    values[at + 1] = Math.max(values[at + 1] as number, (values[at] as number) + APART);
  },
  says({ band, placeAt, metres }) {
    return {
      kind: "interconnection",
      from: placeAt(band(0)),
      to: placeAt(band(1)),
      metres: metres === undefined ? undefined : band(2, metres),
    };
  },
};

export const interconnection: Explanation<InterconnectionSaid> = { id: "interconnection", innocent: false, tried };

/**
 * Its ends lie about a run of points that read high; the runs that stand out most are tried with several lengths of cable
 * and shares of the ring, the scale of the ring set to the readings, and the best start of each is refined.
 */
function tried({ problem, base }: Around): readonly Tried<InterconnectionSaid>[] {
  // Beside other faults, what stands out is not the run.
  if (base.hypothesis.faults.some(({ key }) => key === "interconnection")) return [];
  const common = [...base.values.slice(0, OWN)];
  const work = new Float64Array(problem.asked.length);
  const places = [...base.values.slice(positionsAt(base.hypothesis))];
  return highRuns(problem).map((run) => {
    let best: { readonly misfit: number; readonly tried: Tried<InterconnectionSaid> } | undefined;
    for (const share of TRIED_SHARES)
      for (const length of TRIED_LENGTHS) {
        const [sizes, at] = about(run, share, length, places.length);
        predict(
          { faults: [...SOUND.faults, BRIDGED] },
          Float64Array.from([...common, ...sizes, ...at]),
          problem.asked,
          work,
        );
        const gain = bestGain(problem.observed, work);
        const scaled = work.map((ohms) => ohms * gain);
        const misfit = misfitOf(problem.observed, scaled);
        if (best === undefined || misfit < best.misfit)
          best = { misfit, tried: { fault: BRIDGED, sizes, places: at, line: gain } };
      }
    return best?.tried ?? { fault: BRIDGED, sizes: SIZES.map(({ value }) => value) };
  });
}

/** First and last point of a run. */
type Run = readonly [first: number, last: number];

/** Runs of points that read higher than the others, by how far they stand out. */
function highRuns({ observed, input }: Problem): readonly Run[] {
  const count = input.points.length;
  // Sums of the heights, and of the points that were read, up to each point.
  const heights = new Float64Array(count + 1);
  const known = new Float64Array(count + 1);
  const read = new Uint8Array(count);
  for (const { asked, shown, bound, deviation } of observed) {
    if (asked.point < 0 || bound === "above") continue;
    heights[asked.point + 1] = (heights[asked.point + 1] as number) + shown / deviation;
    read[asked.point] = 1;
  }
  for (let i = 0; i < count; i++) {
    heights[i + 1] = (heights[i + 1] as number) + (heights[i] as number);
    known[i + 1] = (read[i] as number) + (known[i] as number);
  }
  const [all, points] = [heights[count] as number, known[count] as number];
  const runs: { readonly run: Run; readonly contrast: number }[] = [];
  for (let first = 0; first < count; first++)
    for (let last = first; last < count; last++) {
      const total = (heights[last + 1] as number) - (heights[first] as number);
      const inside = (known[last + 1] as number) - (known[first] as number);
      const outside = points - inside;
      if (inside === 0 || outside === 0) continue;
      const apart = total / inside - (all - total) / outside;
      runs.push({ run: [first, last], contrast: apart / Math.sqrt(1 / inside + 1 / outside) });
    }
  const most = Math.max(...runs.map(({ contrast }) => contrast));
  return runs
    .filter(({ contrast }) => contrast > most * NEAR_MOST)
    .sort((a, b) => b.contrast - a.contrast)
    .slice(0, TRIED_RUNS)
    .map(({ run }) => run);
}

/** Sizes about a run and places of the points, for a share of the ring between its ends; 0: even distances. */
function about(
  [first, last]: Run,
  share: number,
  length: number,
  count: number,
): readonly [sizes: readonly number[], places: readonly number[]] {
  const even = (i: number) => (i + 1) / (count + 1);
  const spread = 0.6 / (count + 1);
  if (share === 0) {
    const places = Array.from({ length: count }, (_, i) => even(i));
    return [[even(first) - spread, even(last) + spread, length], places];
  }
  const before = ((1 - share) * (first + 0.5)) / (count - (last - first));
  const places = Array.from({ length: count }, (_, i) => {
    if (i < first) return (before * (i + 1)) / (first + 0.5);
    if (i <= last) return before + (share * (i - first + 1)) / (last - first + 2);
    return before + share + ((1 - share - before) * (i - last - 0.5)) / (count - last - 0.5);
  });
  return [[before, before + share, length], places];
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
