import type { Asked } from "./asked.ts";
import type { Hypothesis } from "./fault.ts";
import { RingModel } from "./ring-model.ts";

/** Places of the parameters common to all hypotheses: logarithms of the line's ohms and of the ratios, errors of the meter. */
export const LINE = 0;
export const NEUTRAL_RATIO = 1;
export const CPC_RATIO = 2;
export const SCALE = 3;
export const OFFSET = 4;
/** From here on the sizes of the faults, in their order, and after them the places of the points. */
export const OWN = 5;

export const SOUND: Hypothesis = Object.freeze({ faults: Object.freeze([]) });

/** Where the positions of the points begin in the vector of parameters. */
export function positionsAt({ faults }: Hypothesis): number {
  return faults.reduce((sum, { sizes }) => sum + sizes.length, OWN);
}

/** Where the sizes of each fault begin. */
export function sizesAt({ faults }: Hypothesis): readonly number[] {
  let at = OWN;
  return faults.map(({ sizes }) => {
    at += sizes.length;
    return at - sizes.length;
  });
}

/** The middle of a leg, by parts of the ring. */
export function middleOf(leg: number, values: Float64Array, from: number): number {
  const points = values.length - from;
  const before = leg === 0 ? 0 : (values[from + leg - 1] as number);
  const after = leg >= points ? 1 : (values[from + leg] as number);
  return (before + after) / 2;
}

/** The ring as a hypothesis has it, with these parameters. `places` are those by which the middles of legs are found. */
export function modelOf(hypothesis: Hypothesis, values: Float64Array): RingModel {
  const line = Math.exp(values[LINE] as number);
  const neutral = line * Math.exp(values[NEUTRAL_RATIO] as number);
  const model = new RingModel(line, neutral, line * Math.exp(values[CPC_RATIO] as number));
  const from = positionsAt(hypothesis);
  let at = OWN;
  for (const fault of hypothesis.faults) {
    fault.bears?.(model, values, at, fault.leg === undefined ? -1 : middleOf(fault.leg, values, from));
    at += fault.sizes.length;
  }
  return model;
}

/** What a ring would show to every reading, Ω, before scale and offset of the meter. Infinite where nothing connects. */
export function predict(
  hypothesis: Hypothesis,
  values: Float64Array,
  asked: readonly Asked[],
  out: Float64Array,
): RingModel {
  const model = modelOf(hypothesis, values);
  const from = positionsAt(hypothesis);
  for (let i = 0; i < asked.length; i++) {
    const one = asked[i] as Asked;
    out[i] = model.read(one, one.point < 0 ? 0 : (values[from + one.point] as number));
  }
  return model;
}

/** What the meter would show for a resistance, by the common errors of the fit. */
export function shownFor(ohms: number, values: Float64Array): number {
  return ohms * (1 + (values[SCALE] as number)) + (values[OFFSET] as number);
}
