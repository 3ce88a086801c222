import { CONDUCTORS, type Conductor } from "../asked.ts";
import type { Explanation, Tried } from "../explanation.ts";
import type { Banded, Fault, RingPlace, Size } from "../fault.ts";

export interface JointSaid {
  readonly kind: "joint";
  readonly conductor: Conductor;
  readonly ohms: Banded;
  readonly place: RingPlace | undefined;
}

const COMMON = 0.01;
/** Wide, so that the readings decide, Ω. */
export const OHMS_OF_JOINT: Size = { value: 0.3, deviation: 3, low: 1e-5, high: 1e4 };
/** What is tried first, Ω: half of what is read, within these. */
const LEAST_TRIED = 0.05;
const MOST_TRIED = 0.5;
/** A conductor that reads higher than the others make it by less than this, in deviations, has no joint that shows. */
const HIGHER = 0.3;

/** A joint of some resistance in a conductor of a leg. */
export function jointIn(conductor: Conductor, leg: number): Fault<JointSaid> {
  return {
    key: `joint ${conductor}`,
    common: COMMON,
    leg,
    inLeg: (other) => jointIn(conductor, other),
    sizes: [OHMS_OF_JOINT],
    bears: (model, values, at, cut) => model.stop(CONDUCTORS.indexOf(conductor), cut, values[at] as number),
    says: ({ band, place }) => ({ kind: "joint", conductor, ohms: band(0), place }),
  };
}

export const joint: Explanation<JointSaid> = {
  id: "joint",
  innocent: false,
  tried({ problem: { observed }, base }): readonly Tried<JointSaid>[] {
    const { faults } = base.hypothesis;
    return CONDUCTORS.flatMap((conductor, i): readonly Tried<JointSaid>[] => {
      if (faults.some(({ key }) => key === `joint ${conductor}`)) return [];
      const { shown = 0, bound = "above" } = observed[i] ?? {};
      const over = shown - (base.expected[i] as number);
      // A joint makes its conductor read high beside the others; the fit shares that out among them.
      if (faults.length === 0 && bound !== "above" && over < HIGHER * (observed[i]?.deviation ?? 0)) return [];
      const half = Math.min(MOST_TRIED, bound === "above" ? MOST_TRIED : shown) / 2;
      const size = faults.length === 0 || !Number.isFinite(over) ? half : over;
      return [{ inLeg: (leg) => jointIn(conductor, leg), sizes: [Math.max(LEAST_TRIED, size)] }];
    });
  },
};
