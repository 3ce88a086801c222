import { substitute } from "../../networks/cholesky.ts";
import type { Fit, Problem } from "./fit.ts";
import { LINE, OWN, ownCount, positionsAt } from "./parameters.ts";
import { cutOf } from "./prediction.ts";
import type { Ranked } from "./rank.ts";
import type { Conductor, Pair } from "./ring-state.ts";

/** A fitted figure and the band in which it lies with a probability of about 90 %. */
export interface Banded {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A place of the ring, from the board along the outgoing leg. */
export interface RingPlace {
  /** By parts of the ring's length, 0 to 1. */
  readonly part: Banded;
  /** In metres, where the conductor's resistance per metre is known. */
  readonly metres: Banded | undefined;
  /** Legs the place may lie in, most probable first: leg 0 leads from the board to the first point. */
  readonly legs: readonly number[];
}

/** One fault, or something harmless, of an explanation. */
export type RingFault =
  | { readonly kind: "open"; readonly conductors: readonly Conductor[]; readonly place: RingPlace | undefined }
  | {
      readonly kind: "joint";
      readonly conductor: Conductor;
      readonly ohms: Banded;
      readonly place: RingPlace | undefined;
    }
  | {
      readonly kind: "interconnection";
      readonly from: RingPlace | undefined;
      readonly to: RingPlace | undefined;
      /** Length of the cable between the two places, m; undefined where the resistance per metre is not known. */
      readonly metres: Banded | undefined;
    }
  | { readonly kind: "crossed-in-leg"; readonly pair: Pair; readonly place: RingPlace | undefined }
  | { readonly kind: "crossed-rings" }
  | { readonly kind: "leads-not-nulled"; readonly readings: "all" | "r1" | "rn" | "r2"; readonly ohms: Banded }
  | { readonly kind: "same-ends-joined"; readonly pairs: readonly Pair[] }
  /** The protective conductor has this size, mm², and not the one written down. */
  | { readonly kind: "other-cpc"; readonly size: number }
  | { readonly kind: "spur"; readonly point: number; readonly metres: Banded | undefined; readonly ohms: Banded }
  | { readonly kind: "terminal"; readonly point: number; readonly conductor: Conductor; readonly ohms: Banded }
  | { readonly kind: "swapped"; readonly point: number; readonly pair: Pair }
  | { readonly kind: "off"; readonly point: number; readonly conductor: Conductor };

const NINETY = 1.645;

/** Length of the ring by a fit, m. */
export function metresOf({ values }: Fit, { input }: Problem): number | undefined {
  if (input.linePerMetre === undefined) return undefined;
  return Math.exp(values[LINE] as number) / input.linePerMetre.value;
}

/** What an explanation says is there, with places and sizes. Empty: a sound ring. */
export function faultsOf(kind: Ranked, problem: Problem): readonly RingFault[] {
  const { best } = kind;
  const { ring, cpc } = best.hypothesis;
  const placed = problem.input.orderKnown && problem.input.points.length > 0;
  const ohms = () => sizeOf(best, OWN, 1);
  const leg = () => (placed ? legPlace(kind, problem) : undefined);
  const found: RingFault[] = [];
  switch (ring.kind) {
    case "open":
      found.push({ kind: "open", conductors: ring.conductors, place: leg() });
      break;
    case "joint":
      found.push({ kind: "joint", conductor: ring.conductor, ohms: ohms(), place: leg() });
      break;
    case "crossed-in-leg":
      found.push({ kind: "crossed-in-leg", pair: ring.pair, place: leg() });
      break;
    case "interconnection":
      found.push(interconnection(best, problem, placed));
      break;
    case "crossed-rings":
      found.push(ring);
      break;
    case "leads-not-nulled":
      found.push({ ...ring, ohms: ohms() });
      break;
    case "same-ends-joined":
      found.push(ring);
      break;
    case "sound":
      break;
  }
  if (cpc !== undefined) found.push({ kind: "other-cpc", size: cpc });
  return [...found, ...pointFaults(best, problem)];
}

function pointFaults(best: Fit, problem: Problem): readonly RingFault[] {
  const length = metresOf(best, problem);
  let at = OWN + ownCount(best.hypothesis);
  return best.hypothesis.points.map((state): RingFault => {
    if (state.kind === "swapped" || state.kind === "off") return state;
    const size = sizeOf(best, at++, 1);
    if (state.kind === "terminal") return { ...state, ohms: size };
    const whole = Math.exp(best.values[LINE] as number);
    const metres = length === undefined ? undefined : times(size, length);
    return { ...state, metres, ohms: times(size, whole) };
  });
}

function interconnection(best: Fit, problem: Problem, placed: boolean): RingFault {
  const length = metresOf(best, problem);
  const place = (k: number): RingPlace => {
    const part = within(sizeOf(best, OWN + k, 1), 0, 1);
    const legs = [legAt(best, part.value)];
    return { part, metres: length === undefined ? undefined : times(part, length), legs };
  };
  return {
    kind: "interconnection",
    from: placed ? place(0) : undefined,
    to: placed ? place(1) : undefined,
    metres: length === undefined ? undefined : sizeOf(best, OWN + 2, length),
  };
}

function legAt({ hypothesis, values }: Fit, part: number): number {
  return [...values.slice(positionsAt(hypothesis))].filter((place) => place < part).length;
}

/** The legs that hold nine tenths of the probability, and the place they leave. */
function legPlace({ members }: Ranked, problem: Problem): RingPlace {
  const legs: number[] = [];
  let [held, mean, low, high] = [0, 0, 1, 0];
  for (const { fit, part } of members) {
    const { hypothesis, values } = fit;
    const from = positionsAt(hypothesis);
    if (held > 0.9 || !("leg" in hypothesis.ring)) continue;
    mean += part * cutOf(hypothesis.ring, values, from);
    const { leg } = hypothesis.ring;
    held += part;
    legs.push(leg);
    low = Math.min(low, leg === 0 ? 0 : (values[from + leg - 1] as number));
    high = Math.max(high, leg >= values.length - from ? 1 : (values[from + leg] as number));
  }
  const part = { value: held > 0 ? mean / held : (low + high) / 2, low, high };
  const best = members[0]?.fit;
  const length = best === undefined ? undefined : metresOf(best, problem);
  return { part, metres: length === undefined ? undefined : times(part, length), legs };
}

/** A fitted size with its band, from the curvature of the fit. */
function sizeOf({ values, factor }: Fit, at: number, unit: number): Banded {
  const value = values[at] as number;
  const column = new Float64Array(values.length);
  column[at] = 1;
  substitute(factor, values.length, column);
  const deviation = Math.sqrt(Math.max(0, column[at] as number));
  const half = Number.isFinite(deviation) ? NINETY * deviation : value;
  return { value: value * unit, low: Math.max(0, value - half) * unit, high: (value + half) * unit };
}

function times({ value, low, high }: Banded, unit: number): Banded {
  return { value: value * unit, low: low * unit, high: high * unit };
}

function within({ value, low, high }: Banded, least: number, most: number): Banded {
  return { value, low: Math.max(least, low), high: Math.min(most, high) };
}
