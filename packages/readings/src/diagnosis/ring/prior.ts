import type { Fault, Hypothesis, Known } from "./fault.ts";
import { CPC_RATIO, LINE, NEUTRAL_RATIO, OFFSET, OWN, positionsAt, SCALE } from "./hypothesis.ts";
import { commonDeviations, type RingInput, type Uncertain } from "./readings.ts";

/**
 * What is known of the parameters before any reading: centres, and a quadratic form about them of which half is minus the
 * logarithm of the density. Only neighbouring places hang together.
 */
export interface Prior {
  readonly centre: Float64Array;
  /** The form of each parameter with itself. */
  readonly own: Float64Array;
  /** The form of each parameter with the next. */
  readonly next: Float64Array;
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
  const own = new Float64Array(size);
  const next = new Float64Array(size);
  const set = (at: number, value: number, deviation: number) => {
    centre[at] = value;
    own[at] = 1 / deviation ** 2;
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
  setPositions(input, from, { centre, own, next });
  return { centre, own, next, widened: known === written ? 0 : widening(written, known) };
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

function setPositions(input: RingInput, from: number, { centre, own, next }: Omit<Prior, "widened">): void {
  const { points, orderKnown, length } = input;
  const gap = 1 / (points.length + 1);
  const stiff = 1 / (UNEVEN * gap) ** 2;
  const isMeasured = length !== undefined && points.some(({ metres }) => metres !== undefined);
  const isChain = orderKnown && !isMeasured;
  for (const [i, { metres }] of points.entries()) {
    const at = from + i;
    centre[at] = (i + 1) * gap;
    if (metres !== undefined && length !== undefined) {
      centre[at] = Math.min(0.99, Math.max(0.01, metres / length.value));
      own[at] = 1 / Math.hypot(0.02, length.deviation / length.value) ** 2;
    } else if (!orderKnown) own[at] = 1 / 0.29 ** 2;
    else if (isChain) {
      own[at] = 2 * stiff;
      if (i + 1 < points.length) next[at] = -stiff;
    }
  }
}
