import type { SeenAtPoint } from "./explanation.ts";
import { EXPLANATIONS } from "./explanations/index.ts";
import type { Fault, Hypothesis } from "./fault.ts";
import { type Fit, fit, type Problem } from "./fit.ts";
import { LINE, positionsAt, predict } from "./hypothesis.ts";
import { weightOf } from "./weigh.ts";

/** So many points of one ring may hang on spurs or have a poor connection; more is no single story. */
const MOST_POINTS = 5;
/** A point is looked at when its readings lie above what is expected by so much, in squares of deviations. */
const WORTH_A_LOOK = 5;
/** Steps of the fit once a point has been added to an explanation that was fitted already. */
const MOST_STEPS = 3;
/** Resistances of a spur's two conductors over that of the line alone. */
const OF_TWO = 2.3;

/** For each point with an open reading that should have a value: the states that explain it, commonest first. */
export function openStates(problem: Problem, expected: Float64Array): readonly (readonly [Fault, ...Fault[]])[] {
  const all = problem.input.points.map(
    (): Record<keyof SeenAtPoint, SeenAtPoint["line-cpc"]> => ({
      "line-neutral": "none",
      "line-cpc": "none",
      "neutral-cpc": "none",
    }),
  );
  for (const [i, { asked, bound, shown }] of problem.observed.entries()) {
    const seen = all[asked.point];
    if (seen === undefined) continue;
    const isClosed = (expected[i] as number) < shown;
    seen[asked.pair] = bound === "above" ? (isClosed ? "open" : "none") : "closed";
  }
  return all.flatMap((seen, point) => {
    if (seen["line-neutral"] !== "open" && seen["line-cpc"] !== "open") return [];
    const [first, ...rest] = EXPLANATIONS.flatMap(({ openAt }) => openAt?.(point, seen) ?? []);
    return first === undefined ? [] : [[first, ...rest] as const];
  });
}

const isOfOpenPoint = ({ point, sizes, takes }: Fault) =>
  point !== undefined && sizes.length === 0 && takes === undefined;

/** Other explanations of points with open readings: one point changed at a time. */
export function otherOpenPoints(problem: Problem, base: Fit): readonly Fit[] {
  const { faults } = base.hypothesis;
  if (!faults.some(isOfOpenPoint)) return [];
  const expected = new Float64Array(problem.asked.length);
  predict({ faults: faults.filter((one) => !isOfOpenPoint(one)) }, base.values, problem.asked, expected);
  return openStates(problem, expected).flatMap(([, ...others]) =>
    others.map((other) => {
      const changed = faults.map((one) => (isOfOpenPoint(one) && one.point === other.point ? other : one));
      return fit(problem, { faults: changed }, base.values, 2);
    }),
  );
}

/**
 * Explanations with spurs and poor connections at points added one after another, as long as each is worth its cost.
 * At the last point added, the kinds that come near are kept side by side.
 */
export function withPoints(problem: Problem, base: Fit): readonly Fit[] {
  const found: Fit[] = [];
  let best = base;
  for (let i = 0; i < MOST_POINTS; i++) {
    const point = highest(problem, best);
    if (point === undefined) break;
    const states = EXPLANATIONS.flatMap(({ high }) => high?.(point) ?? []);
    const tried = states.map((state) => fit(problem, added(best.hypothesis, state), grown(best, state), MOST_STEPS));
    const [first] = [...tried].sort((a, b) => weightOf(a, problem) - weightOf(b, problem));
    if (first === undefined || weightOf(first, problem) >= weightOf(best, problem)) break;
    found.push(...tried);
    best = first;
  }
  return found;
}

function added({ faults }: Hypothesis, state: Fault): Hypothesis {
  return { faults: [...faults, state] };
}

function grown(base: Fit, state: Fault): Float64Array {
  const from = positionsAt(base.hypothesis);
  const over = base.observed.map(({ asked, shown }, i) =>
    asked.point === state.point ? shown - (base.expected[i] as number) : 0,
  );
  const most = Math.max(0.02, ...over.filter(Number.isFinite));
  const size = state.key.startsWith("spur") ? most / Math.exp(base.values[LINE] as number) / OF_TWO : most;
  return Float64Array.from([...base.values.slice(0, from), size, ...base.values.slice(from)]);
}

/**
 * The point that reads furthest above what is expected and has no state of its own yet. None where most points do: then
 * it is the ring that is not as supposed.
 */
function highest({ input }: Problem, { observed, expected, hypothesis }: Fit): number | undefined {
  const over = new Map<number, number>();
  for (const [i, { asked, shown, bound, deviation }] of observed.entries()) {
    const ohms = expected[i] as number;
    if (asked.point < 0 || bound === "above" || bound === "void" || !Number.isFinite(ohms) || shown <= ohms) continue;
    over.set(asked.point, (over.get(asked.point) ?? 0) + ((shown - ohms) / deviation) ** 2);
  }
  for (const { point } of hypothesis.faults) if (point !== undefined) over.delete(point);
  const high = [...over].filter(([, excess]) => excess > WORTH_A_LOOK).sort((a, b) => b[1] - a[1]);
  return high.length > Math.max(2, input.points.length / 2) ? undefined : high[0]?.[0];
}
