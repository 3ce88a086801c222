import type { Hypothesis } from "./ring-state.ts";

/** Places of the parameters common to all hypotheses. */
export const LINE = 0;
export const NEUTRAL_RATIO = 1;
export const CPC_RATIO = 2;
export const SCALE = 3;
export const OFFSET = 4;
export const OWN = 5;

/** Parameters of the state of the ring: two places and a length for an interconnection, ohms for a joint or leads. */
export function ownCount({ ring }: Hypothesis): number {
  if (ring.kind === "interconnection") return 3;
  return ring.kind === "joint" || ring.kind === "leads-not-nulled" ? 1 : 0;
}

/** Point states with a size to fit: spurs by length, terminals by ohms. */
export function isSized({ kind }: Hypothesis["points"][number]): boolean {
  return kind === "spur" || kind === "terminal";
}

/** Where the positions of the points begin in the vector of parameters. */
export function positionsAt(hypothesis: Hypothesis): number {
  return OWN + ownCount(hypothesis) + hypothesis.points.filter(isSized).length;
}
