import { openPoints } from "./candidates.ts";
import { type Fit, fit, type Problem } from "./fit.ts";
import { positionsAt } from "./parameters.ts";
import { predict } from "./prediction.ts";
import { CONDUCTORS, type Hypothesis, type PointState } from "./ring-state.ts";
import { occam } from "./weights.ts";

/** So many points of one ring may hang on spurs or have a poor connection; more is no single story. */
const MOST_POINTS = 5;
/** A point is looked at when its readings lie above what is expected by so much, in squares of deviations. */
const WORTH_A_LOOK = 5;
/** Steps of the fit once a point has been added to an explanation that was fitted already. */
const MOST_STEPS = 3;

/** Other explanations of points with open readings: one point changed at a time. */
export function otherOpenPoints(problem: Problem, base: Fit): readonly Fit[] {
  const { hypothesis } = base;
  const { ring } = hypothesis;
  const sized = base.hypothesis.points.filter(({ kind }) => kind === "spur" || kind === "terminal");
  if (sized.length === base.hypothesis.points.length) return [];
  const expected = new Float64Array(problem.asked.length);
  const values = Float64Array.from([...base.values.slice(0, positionsAt({ ring, points: [] })), ...placesOf(base)]);
  predict({ ring, points: [] }, values, problem.asked, expected);
  const found: Fit[] = [];
  const states = openPoints(problem, expected);
  for (const [, ...others] of states) {
    for (const other of others) {
      const points = base.hypothesis.points.map((one) => (one.point === other.point ? other : one));
      found.push(fit(problem, { ...hypothesis, points }, base.values, 2));
    }
  }
  return found;
}

/**
 * Explanations with spurs and poor connections at points added one after another, as long as each is worth its cost.
 * At the last point added, the kinds that come near are kept side by side.
 */
export function withPoints(problem: Problem, base: Fit): readonly Fit[] {
  const found: Fit[] = [];
  const [readings, legs] = [problem.observed.length, problem.input.points.length + 1];
  const weight = (one: Fit) => one.cost + occam(one.hypothesis, readings, legs);
  let best = base;
  for (let i = 0; i < MOST_POINTS; i++) {
    const point = highest(problem, best);
    if (point === undefined) break;
    const kinds: readonly PointState[] = [
      { kind: "spur", point },
      ...CONDUCTORS.map((conductor): PointState => ({ kind: "terminal", point, conductor })),
    ];
    const tried = kinds.map((kind) =>
      fit(problem, added(best.hypothesis, kind), grown(best, kind, problem), MOST_STEPS),
    );
    const [first] = [...tried].sort((a, b) => weight(a) - weight(b));
    if (first === undefined || weight(first) >= weight(best)) break;
    found.push(...tried);
    best = first;
  }
  return found;
}

function added(hypothesis: Hypothesis, state: PointState): Hypothesis {
  return { ...hypothesis, points: [...hypothesis.points, state] };
}

const placesOf = ({ hypothesis, values }: Fit): Float64Array => values.slice(positionsAt(hypothesis));

function grown(base: Fit, state: PointState, { observed }: Problem): Float64Array {
  const from = positionsAt(base.hypothesis);
  const over = observed.map(({ asked, shown }, i) =>
    asked.point === state.point ? shown - (base.expected[i] as number) : 0,
  );
  const most = Math.max(0.02, ...over.filter(Number.isFinite));
  return Float64Array.from([
    ...base.values.slice(0, from),
    state.kind === "spur" ? most / Math.exp(base.values[0] as number) / 2.3 : most,
    ...placesOf(base),
  ]);
}

/**
 * The point that reads furthest above what is expected and has no state of its own yet. None where most points do: then
 * it is the ring that is not as supposed.
 */
function highest({ observed, input }: Problem, { expected, hypothesis }: Fit): number | undefined {
  const over = new Map<number, number>();
  for (const [i, { asked, shown, bound, deviation }] of observed.entries()) {
    const ohms = expected[i] as number;
    if (asked.point < 0 || bound === "above" || !Number.isFinite(ohms) || shown <= ohms) continue;
    over.set(asked.point, (over.get(asked.point) ?? 0) + ((shown - ohms) / deviation) ** 2);
  }
  for (const { point } of hypothesis.points) over.delete(point);
  const high = [...over].filter(([, excess]) => excess > WORTH_A_LOOK).sort((a, b) => b[1] - a[1]);
  return high.length > Math.max(2, input.points.length / 2) ? undefined : high[0]?.[0];
}
