import { CONDUCTORS, PAIRS, type Pair } from "../asked.ts";
import type { Explanation } from "../explanation.ts";
import type { Fault, RingPlace } from "../fault.ts";
import { OPEN } from "../ring-model.ts";

export interface CrossedInLegSaid {
  readonly kind: "crossed-in-leg";
  readonly pair: Pair;
  readonly place: RingPlace | undefined;
}

export interface CrossedRingsSaid {
  readonly kind: "crossed-rings";
}

const COMMON_IN_LEG = 0.01;
const COMMON_RINGS = 0.02;

/** Two conductors change places within a leg, so that neither closes upon itself. */
export function crossedIn(pair: Pair, leg: number): Fault<CrossedInLegSaid> {
  return {
    key: `crossed-in-leg ${pair}`,
    common: COMMON_IN_LEG,
    leg,
    inLeg: (other) => crossedIn(pair, other),
    sizes: [],
    bears: (model, _, __, cut) => model.cross(pair, cut),
    says: ({ place }) => ({ kind: "crossed-in-leg", pair, place }),
  };
}

export const crossedInLeg: Explanation<CrossedInLegSaid> = {
  id: "crossed-in-leg",
  innocent: false,
  opens: true,
  tried({ open, base }) {
    const pair = open.length === 2 ? PAIRS.find((one) => one === `${open[0]}-${open[1]}`) : undefined;
    if (pair === undefined || base.hypothesis.faults.some(({ key }) => key.startsWith("crossed"))) return [];
    return [{ inLeg: (leg: number) => crossedIn(pair, leg) }];
  },
};

/** The two ends at the board belong to two different rings. */
export const CROSSED_RINGS: Fault<CrossedRingsSaid> = {
  key: "crossed-rings",
  common: COMMON_RINGS,
  sizes: [],
  bears(model) {
    for (const c of CONDUCTORS.keys()) model.stop(c, 1, OPEN);
  },
  says: () => ({ kind: "crossed-rings" }),
};

export const crossedRings: Explanation<CrossedRingsSaid> = {
  id: "crossed-rings",
  innocent: false,
  opens: true,
  tried: ({ open, problem }) =>
    open.length === CONDUCTORS.length && problem.input.otherRing !== false ? [{ fault: CROSSED_RINGS }] : [],
};
