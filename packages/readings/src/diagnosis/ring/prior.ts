import { CPC_RATIO, LINE, NEUTRAL_RATIO, OFFSET, OWN, positionsAt, SCALE } from "./parameters.ts";
import { commonDeviations, type RingInput, type Uncertain } from "./readings.ts";
import type { Hypothesis } from "./ring-state.ts";

/** What is known of the parameters before any reading: centres, and the matrix of a quadratic form about them. */
export interface Prior {
  readonly centre: Float64Array;
  /** The form, row by row: half of it is minus the logarithm of the density. */
  readonly form: Float64Array;
}

/** Deviation of the gap from point to point over their mean, where the distances are not known. */
const UNEVEN = 1;

/** Sizes of faults before anything is read, as centre and deviation: wide, so that the readings decide. */
const JOINT: Uncertain = { value: 0.3, deviation: 3 };
const LEADS: Uncertain = { value: 0.1, deviation: 0.5 };
const INTERCONNECTION: readonly Uncertain[] = [
  { value: 0.3, deviation: 0.35 },
  { value: 0.7, deviation: 0.35 },
  { value: 0.15, deviation: 0.3 },
];
const SPUR: Uncertain = { value: 0.1, deviation: 0.3 };

/** Ratios of which nothing is known: conductors of a ring lie within a factor of about two. */
const UNKNOWN_RATIO: Uncertain = { value: 1.4, deviation: 0.6 };
const TYPICAL_LINE: Uncertain = { value: 0.45, deviation: 0.45 };

/** The prior of a hypothesis. Positions are a chain from 0 to 1 with gaps of equal mean; their sum is that of the ring. */
export function priorOf(hypothesis: Hypothesis, input: RingInput): Prior {
  const from = positionsAt(hypothesis);
  const count = input.points.length;
  const size = from + count;
  const centre = new Float64Array(size);
  const form = new Float64Array(size * size);
  const set = (at: number, value: number, deviation: number) => {
    centre[at] = value;
    form[at * size + at] = 1 / deviation ** 2;
  };
  const setLogarithm = (at: number, { value, deviation }: Uncertain) => set(at, Math.log(value), deviation / value);
  const common = commonDeviations(input);
  setLogarithm(LINE, lineOf(input));
  setLogarithm(NEUTRAL_RATIO, input.neutralRatio ?? UNKNOWN_RATIO);
  setLogarithm(CPC_RATIO, cpcRatioOf(hypothesis, input) ?? UNKNOWN_RATIO);
  set(SCALE, 0, common.scale);
  set(OFFSET, 0, common.offset);
  let at = OWN;
  for (const { value, deviation } of ownPriors(hypothesis)) set(at++, value, deviation);
  for (const state of hypothesis.points) {
    const prior = state.kind === "spur" ? SPUR : state.kind === "terminal" ? JOINT : undefined;
    if (prior !== undefined) set(at++, prior.value, prior.deviation);
  }
  setPositions(input, from, size, centre, form);
  return { centre, form };
}

/** The size written down holds, with what makers leave open, unless the hypothesis names another. */
function cpcRatioOf({ cpc }: Hypothesis, { cpcRatio, cpcSizes }: RingInput): Uncertain | undefined {
  return cpc === undefined ? cpcRatio : cpcSizes?.find(({ size }) => size === cpc)?.ratio;
}

function lineOf({ linePerMetre, length }: RingInput): Uncertain {
  if (linePerMetre === undefined || length === undefined) return TYPICAL_LINE;
  const value = linePerMetre.value * length.value;
  const relative = Math.hypot(linePerMetre.deviation / linePerMetre.value, length.deviation / length.value);
  return { value, deviation: value * relative };
}

function ownPriors({ ring }: Hypothesis): readonly Uncertain[] {
  if (ring.kind === "interconnection") return INTERCONNECTION;
  if (ring.kind === "joint") return [JOINT];
  return ring.kind === "leads-not-nulled" ? [LEADS] : [];
}

function setPositions(input: RingInput, from: number, size: number, centre: Float64Array, form: Float64Array): void {
  const { points, orderKnown, length } = input;
  const gap = 1 / (points.length + 1);
  const stiff = 1 / (UNEVEN * gap) ** 2;
  const add = (i: number, j: number, value: number) => {
    form[i * size + j] = (form[i * size + j] as number) + value;
  };
  for (const [i, { metres }] of points.entries()) {
    const at = from + i;
    centre[at] = (i + 1) * gap;
    if (metres !== undefined && length !== undefined) {
      centre[at] = Math.min(0.99, Math.max(0.01, metres / length.value));
      add(at, at, 1 / Math.hypot(0.02, length.deviation / length.value) ** 2);
    } else if (!orderKnown) add(at, at, 1 / 0.29 ** 2);
  }
  if (!orderKnown || points.some(({ metres }) => metres !== undefined && length !== undefined)) return;
  for (let i = 0; i <= points.length; i++) {
    if (i < points.length) add(from + i, from + i, stiff);
    if (i > 0) add(from + i - 1, from + i - 1, stiff);
    if (i > 0 && i < points.length) {
      add(from + i - 1, from + i, -stiff);
      add(from + i, from + i - 1, -stiff);
    }
  }
}
