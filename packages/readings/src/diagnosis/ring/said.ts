import { substitute } from "../../networks/cholesky.ts";
import type { RingFaultSaid } from "./explanations/index.ts";
import type { Banded, Fault, Fitted, Hypothesis, RingPlace } from "./fault.ts";
import type { Fit, Problem } from "./fit.ts";
import { CPC_RATIO, LINE, middleOf, positionsAt, sizesAt } from "./hypothesis.ts";
import type { Ranked } from "./weigh.ts";

/** Something of an explanation: a fault, something harmless, or that none of the explanations accounts for the readings. */
export type RingFault =
  | RingFaultSaid
  /** What comes nearest. */
  | { readonly kind: "none-of-these"; readonly nearest: readonly RingFaultSaid[] };

const NINETY = 1.645;

/** Length of the ring by a fit, m. */
export function metresOf({ values }: Fit, { input }: Problem): number | undefined {
  if (input.linePerMetre === undefined) return undefined;
  return Math.exp(values[LINE] as number) / input.linePerMetre.value;
}

/** What an explanation says is there, with places and sizes. Empty: a sound ring. */
export function faultsOf(kind: Ranked, problem: Problem): readonly RingFault[] {
  const { best } = kind;
  const at = sizesAt(best.hypothesis);
  // The list of explanations says in its type that they say nothing else.
  const said = best.hypothesis.faults.map(
    (fault, i) => fault.says(fittedOf(kind, i, at[i] as number, problem)) as RingFaultSaid,
  );
  return kind.none === true ? [{ kind: "none-of-these", nearest: said }] : said;
}

function fittedOf(kind: Ranked, i: number, at: number, problem: Problem): Fitted {
  const { best } = kind;
  const metres = metresOf(best, problem);
  const isPlaced = problem.input.orderKnown && problem.input.points.length > 0;
  const fault = best.hypothesis.faults[i] as Fault;
  return {
    band: (size, unit = 1) => bandOf(best, at + size, unit),
    metres,
    line: Math.exp(best.values[LINE] as number),
    get place() {
      return isPlaced && fault.leg !== undefined ? legPlace(kind, fault, problem) : undefined;
    },
    placeAt(whole) {
      if (!isPlaced) return undefined;
      const part = { ...whole, low: Math.max(0, whole.low), high: Math.min(1, whole.high) };
      const inMetres = metres === undefined ? undefined : times(part, metres);
      return { part, metres: inMetres, legs: [legAt(best, part.value)] };
    },
    get cpcRatio() {
      const { value, low, high } = logBand(best, CPC_RATIO);
      return { value: Math.exp(value), low: Math.exp(low), high: Math.exp(high) };
    },
  };
}

function legAt({ hypothesis, values }: Fit, part: number): number {
  return [...values.slice(positionsAt(hypothesis))].filter((place) => place < part).length;
}

/** The leg in which a hypothesis has a fault; of several alike the one that stands where this one stood. */
function legOf({ faults }: Hypothesis, fault: Fault, nth: number): number | undefined {
  return faults.filter(({ key }) => key === fault.key).sort((a, b) => (a.leg ?? 0) - (b.leg ?? 0))[nth]?.leg;
}

/** The legs that hold nine tenths of the probability, and the place they leave. */
function legPlace({ best, members }: Ranked, fault: Fault, problem: Problem): RingPlace {
  const alike = best.hypothesis.faults.filter(({ key }) => key === fault.key);
  const nth = alike.sort((a, b) => (a.leg ?? 0) - (b.leg ?? 0)).indexOf(fault);
  const legs: number[] = [];
  let [held, mean, low, high] = [0, 0, 1, 0];
  for (const { fit, part } of members) {
    const { hypothesis, values } = fit;
    const from = positionsAt(hypothesis);
    const leg = legOf(hypothesis, fault, nth);
    if (held > 0.9 || leg === undefined) continue;
    mean += part * middleOf(leg, values, from);
    held += part;
    if (!legs.includes(leg)) legs.push(leg);
    low = Math.min(low, leg === 0 ? 0 : (values[from + leg - 1] as number));
    high = Math.max(high, leg >= values.length - from ? 1 : (values[from + leg] as number));
  }
  const part = { value: held > 0 ? mean / held : (low + high) / 2, low, high };
  const length = metresOf(best, problem);
  return { part, metres: length === undefined ? undefined : times(part, length), legs };
}

function deviationOf({ values, factor }: Fit, at: number): number {
  const column = new Float64Array(values.length);
  column[at] = 1;
  substitute(factor, values.length, column);
  return Math.sqrt(Math.max(0, column[at] as number));
}

/** A fitted size with its band, from the curvature of the fit. */
function bandOf(one: Fit, at: number, unit: number): Banded {
  const value = one.values[at] as number;
  const deviation = deviationOf(one, at);
  const half = Number.isFinite(deviation) ? NINETY * deviation : value;
  return { value: value * unit, low: Math.max(0, value - half) * unit, high: (value + half) * unit };
}

/** A fitted logarithm with its band. */
function logBand(one: Fit, at: number): Banded {
  const value = one.values[at] as number;
  const deviation = deviationOf(one, at);
  const half = Number.isFinite(deviation) ? NINETY * deviation : 0;
  return { value, low: value - half, high: value + half };
}

function times({ value, low, high }: Banded, unit: number): Banded {
  return { value: value * unit, low: low * unit, high: high * unit };
}
