import { Chance } from "../../examples/simulate/chance.ts";
import {
  diagnoseRingReadings,
  type RingDiagnosis,
  type RingExplanation,
} from "../../packages/readings/src/diagnosis/ring/index.ts";
import { ringWithTwo } from "./planted-rings.ts";
import { inputOf, type Planted } from "./simulated-ring.ts";
import type { Named, WrittenKind } from "./written-rings.ts";

/** How often the right explanation leads, and how often it is among those that cannot be told apart from what leads. */
export interface Rank {
  readonly rings: number;
  readonly first: number;
  readonly named: number;
  /** Another explanation leads that accounts for the readings, and the right one is not tied with it. */
  readonly wrong: number;
}

/** Rings whose schedule or test is wrong, by one kind. The same seed gives the same rings. */
export function writtenScore({ make }: WrittenKind, rings: number, seed: number): Rank {
  const chance = new Chance(seed);
  return ranked(rings, () => {
    const { input, right } = make(chance);
    return [
      diagnoseRingReadings(input),
      ({ faults }) => faults.length === 1 && right.some((one) => is(one, faults[0])),
    ];
  });
}

/** Rings with two faults at once, neither of them a spur: right is an explanation that names both and nothing else. */
export function twoFaultsScore(rings: number, seed: number): Rank {
  const chance = new Chance(seed);
  return ranked(rings, () => {
    const ring = ringWithTwo(chance);
    const put = [ring.planted, ring.also as Planted].flatMap(apart).sort();
    return [
      diagnoseRingReadings(inputOf(ring, chance)),
      ({ faults }) =>
        faults
          .flatMap((one) => apart(one as unknown as Planted))
          .sort()
          .join() === put.join(),
    ];
  });
}

type Drawn = readonly [RingDiagnosis, (explanation: RingExplanation) => boolean];

function ranked(rings: number, draw: () => Drawn): Rank {
  let [first, named, wrong] = [0, 0, 0];
  for (let i = 0; i < rings; i++) {
    const [{ explanations, leading, accounts }, isRight] = draw();
    const at = explanations.findIndex(isRight);
    if (at === 0) first++;
    if (at >= 0 && at < leading) named++;
    else if (accounts) wrong++;
  }
  return { rings, first, named, wrong };
}

function is(right: Named, fault: object | undefined): boolean {
  const said = fault as Readonly<Record<string, unknown>> | undefined;
  return Object.entries(right).every(([key, value]) => JSON.stringify(said?.[key]) === JSON.stringify(value));
}

const NAMED = ["kind", "conductor", "pair", "pairs", "point", "readings"] as const;

/** What names a fault; conductors that are open in one leg are one each. */
function apart(fault: Planted): readonly string[] {
  if (fault.kind === "open") return fault.conductors.map((one) => `open ${one}`);
  const all = fault as unknown as Readonly<Record<string, unknown>>;
  return [NAMED.map((key) => JSON.stringify(all[key]) ?? "").join(" ")];
}
