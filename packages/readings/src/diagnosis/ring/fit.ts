import { factorise, substitute } from "../../networks/cholesky.ts";
import { CPC_RATIO, isSized, LINE, NEUTRAL_RATIO, OFFSET, OWN, ownCount, positionsAt, SCALE } from "./parameters.ts";
import { cutOf, type Networks, predict, predictMoved, shownFor } from "./prediction.ts";
import { type Prior, priorOf } from "./prior.ts";
import type { Observed, RingInput } from "./readings.ts";
import type { Asked, Hypothesis } from "./ring-state.ts";

/** A hypothesis with the parameters that explain the readings best. */
export interface Fit {
  readonly hypothesis: Hypothesis;
  readonly values: Float64Array;
  /** Σ((shown − expected) ÷ deviation)² over the readings, what is open where it must not be at {@link IMPOSSIBLE}. */
  readonly misfit: number;
  /** Misfit and the quadratic form of the prior: what the fit makes least. */
  readonly cost: number;
  /** What each reading would show, Ω. */
  readonly expected: Float64Array;
  /** Cholesky factor of the inverse of the parameters' covariance. */
  readonly factor: Float64Array;
}

/** The readings and the ring, as the fit needs them. */
export interface Problem {
  readonly input: RingInput;
  readonly observed: readonly Observed[];
  readonly asked: readonly Asked[];
  /** Size of the protective conductor that is tried in place of the one written down, mm². */
  readonly cpc?: number;
}

/** Cost of a reading that is open where the hypothesis has a value, or the other way round: a slip of the hand. */
const IMPOSSIBLE = 40;

const STEP = 1e-5;
const MOST_STEPS = 8;
const GOOD_ENOUGH = 0.05;

/** Fits the parameters of a hypothesis by Gauss-Newton steps, halved while they do not help. */
export function fit(problem: Problem, hypothesis: Hypothesis, start?: Float64Array, most = MOST_STEPS): Fit {
  const prior = priorOf(hypothesis, problem.input);
  const size = prior.centre.length;
  let values = held(hypothesis, start ?? prior.centre.slice(), problem.input.orderKnown);
  const work = new Float64Array(problem.asked.length);
  let { cost, misfit, expected, networks } = evaluate(problem, hypothesis, prior, values, work);
  let factor = new Float64Array(size * size);
  for (let step = 0; step < most; step++) {
    const { normal, slope } = linearised(problem, hypothesis, prior, values, work, networks);
    factor = normal;
    if (!factorise(factor, size)) break;
    substitute(factor, size, slope);
    let better = false;
    const before = cost;
    for (let damp = 1; damp > 0.05 && !better; damp /= 3) {
      const next = held(
        hypothesis,
        values.map((value, i) => value + damp * (slope[i] as number)),
        problem.input.orderKnown,
      );
      const tried = evaluate(problem, hypothesis, prior, next, work);
      if (tried.cost >= cost) continue;
      better = true;
      values = next;
      ({ cost, misfit, expected, networks } = tried);
    }
    if (!better || before - cost < GOOD_ENOUGH) break;
  }
  return { hypothesis, values, misfit, cost, expected, factor };
}

/** Keeps parameters where they mean something: sizes not below nothing, places within the ring and in order. */
function held(hypothesis: Hypothesis, values: Float64Array, orderKnown: boolean): Float64Array {
  const { ring, points } = hypothesis;
  const from = positionsAt(hypothesis);
  const own = ownCount(hypothesis);
  const limit = (i: number, low: number, high: number) => {
    values[i] = Math.min(high, Math.max(low, values[i] as number));
  };
  limit(SCALE, -0.5, 0.5);
  limit(LINE, -6, 4);
  limit(1, -2, 2);
  limit(2, -2, 3);
  if (ring.kind === "interconnection") {
    limit(OWN, 0.002, 0.97);
    limit(OWN + 1, (values[OWN] as number) + 0.02, 0.998);
    limit(OWN + 2, 1e-4, 3);
  } else if (own > 0) limit(OWN, 1e-5, 1e4);
  for (let i = 0; i < points.filter(isSized).length; i++) limit(OWN + own + i, 1e-5, 1e4);
  const count = values.length - from;
  const least = 0.1 / (count + 1);
  for (let i = 0; i < count; i++) {
    const low = orderKnown ? (i === 0 ? 0 : (values[from + i - 1] as number)) + least : 0.005;
    limit(from + i, low, orderKnown ? 1 - (count - i) * least : 0.995);
  }
  return values;
}

function evaluate(problem: Problem, hypothesis: Hypothesis, prior: Prior, values: Float64Array, work: Float64Array) {
  const networks = predict(hypothesis, values, problem.asked, work);
  const expected = work.map((ohms) => shownFor(ohms, values));
  const misfit = misfitOf(problem.observed, expected);
  return { expected, networks, misfit, cost: misfit + quadratic(prior, values) };
}

/** Σ of squares over the readings; open against closed costs {@link IMPOSSIBLE}. */
export function misfitOf(observed: readonly Observed[], expected: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < observed.length; i++) {
    const one = observed[i] as Observed;
    sum += isCounted(one, expected[i] as number)
      ? (((expected[i] as number) - one.shown) / one.deviation) ** 2
      : openCost(one, expected[i] as number);
  }
  return sum;
}

function isCounted({ bound }: Observed, expected: number): boolean {
  return bound !== "above" && expected !== Number.POSITIVE_INFINITY;
}

function openCost({ bound, shown }: Observed, expected: number): number {
  return bound === "above" && expected > 0.9 * shown ? 0 : IMPOSSIBLE;
}

function quadratic({ centre, form }: Prior, values: Float64Array): number {
  const size = centre.length;
  let sum = 0;
  for (let i = 0; i < size; i++) {
    const a = (values[i] as number) - (centre[i] as number);
    for (let j = 0; j < size; j++) {
      const weight = form[i * size + j] as number;
      if (weight !== 0) sum += a * weight * ((values[j] as number) - (centre[j] as number));
    }
  }
  return sum;
}

/** The readings a parameter can change: the neutral's own resistance is not in those from line to cpc, nor the cpc's in the others. */
function touchedBy({ ring }: Hypothesis, parameter: number): ((one: Asked) => boolean) | undefined {
  if (ring.kind === "crossed-in-leg" || (parameter !== NEUTRAL_RATIO && parameter !== CPC_RATIO)) return undefined;
  const pair = parameter === NEUTRAL_RATIO ? "line-cpc" : "line-neutral";
  return (one) => one.point < 0 || one.pair !== pair;
}

function inProportion({ ring, points }: Hypothesis): boolean {
  return ring.kind !== "joint" && ring.kind !== "leads-not-nulled" && points.every(({ kind }) => kind !== "terminal");
}

/** Normal matrix and slope of the cost at `values`, where the prediction is `base`. Derivatives by scale and offset are exact, those of a point touch its readings only. */
function linearised(
  { observed, asked }: Problem,
  hypothesis: Hypothesis,
  prior: Prior,
  values: Float64Array,
  base: Float64Array,
  networks: Networks,
) {
  const size = values.length;
  const from = positionsAt(hypothesis);
  const cut = cutOf(hypothesis.ring, values, from);
  const gain = 1 + (values[SCALE] as number);
  const columns = Array.from({ length: from }, (_, j) => {
    if (j === SCALE) return base;
    // With every resistance in proportion to the line's, so are the readings.
    if (j === LINE && inProportion(hypothesis)) return base.map((ohms) => ohms * gain);
    if (j === OFFSET) return new Float64Array(asked.length).fill(1);
    const column = base.slice();
    const moved = values.slice();
    moved[j] = (moved[j] as number) + STEP;
    predict(hypothesis, moved, asked, column, cut, touchedBy(hypothesis, j));
    return column.map((ohms, i) => ((ohms - (base[i] as number)) / STEP) * gain);
  });
  const moved = values.map((value, i) => (i < from ? value : value + STEP));
  const byPlace = new Float64Array(asked.length);
  predictMoved(hypothesis, moved, asked, byPlace, networks);

  const normal = prior.form.slice();
  const slope = new Float64Array(size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      const weight = prior.form[i * size + j] as number;
      if (weight !== 0)
        slope[i] = (slope[i] as number) - weight * ((values[j] as number) - (prior.centre[j] as number));
    }
  const row = new Float64Array(from + 1);
  for (let i = 0; i < observed.length; i++) {
    const one = observed[i] as Observed;
    const ohms = base[i] as number;
    if (!isCounted(one, ohms)) continue;
    const residual = (one.shown - shownFor(ohms, values)) / one.deviation;
    for (let j = 0; j < from; j++) row[j] = ((columns[j] as Float64Array)[i] as number) / one.deviation;
    const { point } = asked[i] as Asked;
    const touched = point < 0 ? from : from + 1;
    row[from] = point < 0 ? 0 : ((((byPlace[i] as number) - ohms) / STEP) * gain) / one.deviation;
    const placeOf = (k: number) => (k < from ? k : from + point);
    for (let a = 0; a < touched; a++) {
      const p = placeOf(a);
      slope[p] = (slope[p] as number) + (row[a] as number) * residual;
      for (let b = 0; b < touched; b++) {
        const at = p * size + placeOf(b);
        normal[at] = (normal[at] as number) + (row[a] as number) * (row[b] as number);
      }
    }
  }
  return { normal, slope };
}
