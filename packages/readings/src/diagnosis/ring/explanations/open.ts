import { CONDUCTORS, type Conductor } from "../asked.ts";
import type { Explanation, Tried } from "../explanation.ts";
import type { Fault, RingPlace } from "../fault.ts";
import { OPEN } from "../ring-model.ts";

export interface OpenSaid {
  readonly kind: "open";
  readonly conductors: readonly Conductor[];
  readonly place: RingPlace | undefined;
}

const COMMON = 0.02;

/** Conductors that end in one leg. Together they are less common, by what one of three is. */
export function openIn(conductors: readonly Conductor[], leg: number): Fault<OpenSaid> {
  return {
    key: `open ${conductors.join(" ")}`,
    common: COMMON / CONDUCTORS.length ** (conductors.length - 1),
    leg,
    inLeg: (other) => openIn(conductors, other),
    sizes: [],
    bears(model, _, __, cut) {
      for (const one of conductors) model.stop(CONDUCTORS.indexOf(one), cut, OPEN);
    },
    says: ({ place }) => ({ kind: "open", conductors, place }),
  };
}

export const open: Explanation<OpenSaid> = {
  id: "open",
  innocent: false,
  opens: true,
  tried({ open, base }): readonly Tried<OpenSaid>[] {
    const inLeg = (conductors: readonly Conductor[]) => ({ inLeg: (leg: number) => openIn(conductors, leg) });
    if (open.length > 1) return [inLeg(open), ...open.map((one) => inLeg([one]))];
    if (open.length === 1) return [inLeg(open)];
    // Broken once more, the points between hang on nothing; beside a bridge, the ends read closed.
    const { faults } = base.hypothesis;
    const broken = CONDUCTORS.filter((one) => faults.some(({ key }) => key === `open ${one}`));
    const bridged = faults.some(({ key }) => key === "interconnection");
    return (bridged ? CONDUCTORS : broken).map((one) => inLeg([one]));
  },
};
