import type { Fault, Hypothesis, Known } from "./fault.ts";
import { CPC_RATIO, LINE, NEUTRAL_RATIO, OFFSET, OWN, positionsAt, SCALE } from "./hypothesis.ts";
import { commonDeviations, type RingInput, type Uncertain } from "./readings.ts";

/** What is known of the parameters before any reading: centres, and the matrix of a quadratic form about them. */
export interface Prior {
  readonly centre: Float64Array;
  /** The form, row by row: half of it is minus the logarithm of the density. */
  readonly form: Float64Array;
  /** What it costs to take for less known what is known, as −2 ln: the density there is thinner. */
  readonly widened: number;
}

/** Deviation of the gap from point to point over their mean, where the distances are not known. */
const UNEVEN = 1;

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
  const written = knownOf(input);
  const known = supposed(hypothesis.faults, written);
  setLogarithm(LINE, known.line);
  setLogarithm(NEUTRAL_RATIO, known.neutralRatio);
  setLogarithm(CPC_RATIO, known.cpcRatio);
  set(SCALE, 0, common.scale);
  set(OFFSET, 0, common.offset);
  let at = OWN;
  for (const { sizes } of hypothesis.faults) for (const { value, deviation } of sizes) set(at++, value, deviation);
  setPositions(input, from, size, centre, form);
  return { centre, form, widened: known === written ? 0 : widening(written, known) };
}

/** What the sizes and the length written down say of the conductors. */
export function knownOf(input: RingInput): Known {
  return {
    line: lineOf(input),
    neutralRatio: input.neutralRatio ?? UNKNOWN_RATIO,
    cpcRatio: input.cpcRatio ?? UNKNOWN_RATIO,
  };
}

function supposed(faults: readonly Fault[], known: Known): Known {
  return faults.reduce((sum, { supposes }) => supposes?.(sum) ?? sum, known);
}

function widening(written: Known, known: Known): number {
  return (["line", "neutralRatio", "cpcRatio"] as const).reduce((sum, key) => {
    const [before, after] = [written[key], known[key]];
    return sum + Math.max(0, 2 * Math.log(after.deviation / after.value / (before.deviation / before.value)));
  }, 0);
}

function lineOf({ linePerMetre, length }: RingInput): Uncertain {
  if (linePerMetre === undefined || length === undefined) return TYPICAL_LINE;
  const value = linePerMetre.value * length.value;
  const relative = Math.hypot(linePerMetre.deviation / linePerMetre.value, length.deviation / length.value);
  return { value, deviation: value * relative };
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
