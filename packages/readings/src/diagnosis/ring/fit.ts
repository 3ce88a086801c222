import { factorise, substitute } from "../../networks/cholesky.ts";
import type { Asked } from "./asked.ts";
import type { Hypothesis } from "./fault.ts";
import { LINE, modelOf, OFFSET, OWN, positionsAt, predict, SCALE, shownFor } from "./hypothesis.ts";
import { type Prior, priorOf } from "./prior.ts";
import type { Observed, RingInput } from "./readings.ts";
import type { RingModel } from "./ring-model.ts";

/** A hypothesis with the parameters that explain the readings best. */
export interface Fit {
  readonly hypothesis: Hypothesis;
  readonly values: Float64Array;
  /** The readings as the hypothesis takes them. */
  readonly observed: readonly Observed[];
  /** Σ((shown − expected) ÷ deviation)² over the readings, what is open where it must not be at {@link IMPOSSIBLE}. */
  readonly misfit: number;
  /** Misfit, the quadratic form of the prior, and what the hypothesis takes otherwise than written. */
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
  /** Legs that can be told apart. */
  readonly legs: number;
}

export function problemOf(input: RingInput, observed: readonly Observed[]): Problem {
  const legs = input.orderKnown ? input.points.length + 1 : 1;
  return { input, observed, asked: observed.map(({ asked }) => asked), legs };
}

/** Cost of a reading that is open where the hypothesis has a value, or the other way round: a slip of the hand. */
const IMPOSSIBLE = 40;

const STEP = 1e-5;
const MOST_STEPS = 8;
const GOOD_ENOUGH = 0.05;
/** A step is made shorter by three until it helps; shorter than this it is given up. */
const SHORTEST = 0.05;

/** Fits the parameters of a hypothesis by Gauss-Newton steps, shortened while they do not help. */
export function fit(problem: Problem, hypothesis: Hypothesis, start?: Float64Array, most = MOST_STEPS): Fit {
  const prior = priorOf(hypothesis, problem.input);
  const size = prior.centre.length;
  const { observed, cost: taken } = takenBy(hypothesis, problem);
  const hold = (values: Float64Array) => held(hypothesis, values, problem.input.orderKnown);
  const evaluate = (values: Float64Array) => evaluated(problem, observed, hypothesis, prior, values);
  let values = hold(start?.slice() ?? prior.centre.slice());
  let { cost, misfit, expected, ohms, model } = evaluate(values);
  let factor = new Float64Array(size * size);
  for (let step = 0; step < most; step++) {
    const { normal, slope } = linearised(problem, observed, hypothesis, prior, values, ohms, model);
    factor = normal.slice();
    if (!factorise(factor, size)) break;
    const along = stepFrom(values, slope, normal, factor, hold);
    let better = false;
    const before = cost;
    for (let damp = 1; damp > SHORTEST && !better; damp /= 3) {
      const next = hold(values.map((value, i) => value + damp * (along[i] as number)));
      const tried = evaluate(next);
      if (tried.cost >= cost) continue;
      better = true;
      values = next;
      ({ cost, misfit, expected, ohms, model } = tried);
    }
    if (!better || before - cost < GOOD_ENOUGH) break;
  }
  return { hypothesis, values, observed, misfit, cost: cost + taken + prior.widened, expected, factor };
}

/** The readings as the faults take them, one after another. */
function takenBy({ faults }: Hypothesis, problem: Problem) {
  let { observed }: { readonly observed: readonly Observed[] } = problem;
  let cost = 0;
  for (const { takes } of faults) {
    if (takes === undefined) continue;
    const taken = takes(observed);
    observed = taken.observed;
    cost += taken.cost;
  }
  return { observed, cost };
}

/**
 * The step to where the linearised cost is least. A parameter that stands at the end of where it means something and
 * would leave it stays, and the others step as they do best without it.
 */
function stepFrom(
  values: Float64Array,
  slope: Float64Array,
  normal: Float64Array,
  factor: Float64Array,
  hold: (next: Float64Array) => Float64Array,
): Float64Array {
  const size = values.length;
  const step = slope.slice();
  substitute(factor, size, step);
  const stopped = hold(values.map((value, i) => value + (step[i] as number)));
  const stays: number[] = [];
  for (let i = 0; i < size; i++) if (stopped[i] === values[i] && step[i] !== 0) stays.push(i);
  if (stays.length === 0) return step;
  const less = normal.slice();
  const rest = slope.slice();
  for (const i of stays) {
    for (let j = 0; j < size; j++) less[i * size + j] = less[j * size + i] = 0;
    less[i * size + i] = 1;
    rest[i] = 0;
  }
  if (!factorise(less, size)) return step;
  substitute(less, size, rest);
  return rest;
}

/** Keeps parameters where they mean something: sizes within their limits, places within the ring and in order. */
function held(hypothesis: Hypothesis, values: Float64Array, orderKnown: boolean): Float64Array {
  const limit = (i: number, low: number, high: number) => {
    values[i] = Math.min(high, Math.max(low, values[i] as number));
  };
  limit(SCALE, -0.5, 0.5);
  limit(LINE, -6, 4);
  limit(1, -2, 2);
  limit(2, -2, 3);
  let from = OWN;
  for (const { sizes, hold } of hypothesis.faults) {
    for (const [k, { low, high }] of sizes.entries()) limit(from + k, low, high);
    hold?.(values, from);
    from += sizes.length;
  }
  const count = values.length - from;
  const least = 0.1 / (count + 1);
  for (let i = 0; i < count; i++) {
    const low = orderKnown ? (i === 0 ? 0 : (values[from + i - 1] as number)) + least : 0.005;
    limit(from + i, low, orderKnown ? 1 - (count - i) * least : 0.995);
  }
  return values;
}

function evaluated(
  { asked }: Problem,
  observed: readonly Observed[],
  hypothesis: Hypothesis,
  prior: Prior,
  values: Float64Array,
) {
  const ohms = new Float64Array(asked.length);
  const model = predict(hypothesis, values, asked, ohms);
  const expected = ohms.map((one) => shownFor(one, values));
  const misfit = misfitOf(observed, expected);
  return { ohms, expected, model, misfit, cost: misfit + quadratic(prior, values) };
}

/** Σ of squares over the readings; open against closed costs {@link IMPOSSIBLE}. */
export function misfitOf(observed: readonly Observed[], expected: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < observed.length; i++) {
    const one = observed[i] as Observed;
    if (one.bound === "void") continue;
    sum += isCounted(one, expected[i] as number)
      ? (((expected[i] as number) - one.shown) / one.deviation) ** 2
      : openCost(one, expected[i] as number);
  }
  return sum;
}

function isCounted({ bound }: Observed, expected: number): boolean {
  return bound !== "above" && bound !== "void" && expected !== Number.POSITIVE_INFINITY;
}

function openCost({ bound, shown }: Observed, expected: number): number {
  return bound === "above" && expected > 0.9 * shown ? 0 : IMPOSSIBLE;
}

function quadratic({ centre, own, next }: Prior, values: Float64Array): number {
  let sum = 0;
  let before = 0;
  for (let i = 0; i < centre.length; i++) {
    const off = (values[i] as number) - (centre[i] as number);
    sum += off * off * (own[i] as number) + (i > 0 ? 2 * before * off * (next[i - 1] as number) : 0);
    before = off;
  }
  return sum;
}

/** How the readings change with every parameter but the places, one after another. */
function columnsOf({ asked }: Problem, hypothesis: Hypothesis, values: Float64Array, base: Float64Array) {
  const gain = 1 + (values[SCALE] as number);
  const places = values.subarray(positionsAt(hypothesis));
  return Array.from({ length: positionsAt(hypothesis) }, (_, j) => {
    if (j === SCALE) return base;
    const column = new Float64Array(asked.length);
    if (j === OFFSET) return column.fill(1);
    const moved = values.slice();
    moved[j] = (moved[j] as number) + STEP;
    const model = modelOf(hypothesis, moved);
    for (let i = 0; i < asked.length; i++) {
      const one = asked[i] as Asked;
      const ohms = model.read(one, one.point < 0 ? 0 : (places[one.point] as number));
      column[i] = ((ohms - (base[i] as number)) / STEP) * gain;
    }
    return column;
  });
}

/** Normal matrix and slope of the cost at `values`, where the prediction is `base`. The place of a point touches its readings only. */
function linearised(
  problem: Problem,
  observed: readonly Observed[],
  hypothesis: Hypothesis,
  prior: Prior,
  values: Float64Array,
  base: Float64Array,
  model: RingModel,
) {
  const size = values.length;
  const from = positionsAt(hypothesis);
  const gain = 1 + (values[SCALE] as number);
  const columns = columnsOf(problem, hypothesis, values, base);
  const { normal, slope } = priorPart(prior, values);
  const row = new Float64Array(from + 1);
  for (let i = 0; i < observed.length; i++) {
    const one = observed[i] as Observed;
    const ohms = base[i] as number;
    if (!isCounted(one, ohms)) continue;
    const residual = (one.shown - shownFor(ohms, values)) / one.deviation;
    for (let j = 0; j < from; j++) row[j] = ((columns[j] as Float64Array)[i] as number) / one.deviation;
    const { point } = one.asked;
    const touched = point < 0 ? from : from + 1;
    if (point >= 0) {
      const beyond = model.read(one.asked, (values[from + point] as number) + STEP);
      row[from] = (((beyond - ohms) / STEP) * gain) / one.deviation;
    }
    for (let a = 0; a < touched; a++) {
      const p = a < from ? a : from + point;
      slope[p] = (slope[p] as number) + (row[a] as number) * residual;
      for (let b = 0; b < touched; b++) {
        const at = p * size + (b < from ? b : from + point);
        normal[at] = (normal[at] as number) + (row[a] as number) * (row[b] as number);
      }
    }
  }
  return { normal, slope };
}

/** The prior's part of the normal matrix, and of the slope at `values`. */
function priorPart({ own, next, centre }: Prior, values: Float64Array) {
  const size = values.length;
  const normal = new Float64Array(size * size);
  const slope = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const off = (values[i] as number) - (centre[i] as number);
    normal[i * size + i] = own[i] as number;
    slope[i] = (slope[i] as number) - (own[i] as number) * off;
    const coupled = next[i] as number;
    if (coupled === 0) continue;
    normal[i * size + i + 1] = normal[(i + 1) * size + i] = coupled;
    slope[i] = (slope[i] as number) - coupled * ((values[i + 1] as number) - (centre[i + 1] as number));
    slope[i + 1] = (slope[i + 1] as number) - coupled * off;
  }
  return { normal, slope };
}
