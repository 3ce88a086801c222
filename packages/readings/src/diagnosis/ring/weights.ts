import { isSized, ownCount } from "./parameters.ts";
import { CONDUCTORS, type Hypothesis, type PointState, type RingState } from "./ring-state.ts";

/**
 * How common each state is before anything is read, against a sound ring taken as 1. Experience of the trade, not a
 * count; a change by a factor of two moves no finding that the readings carry.
 */
const COMMON: Readonly<Record<RingState["kind"], number>> = {
  sound: 1,
  open: 0.02,
  joint: 0.01,
  interconnection: 0.03,
  "crossed-in-leg": 0.01,
  "crossed-rings": 0.02,
  "leads-not-nulled": 0.01,
  "same-ends-joined": 0.02,
};

/**
 * A protective conductor of this or that other size than the one written down, beside whatever else is so. As common as
 * one loose joint is once its ohms are paid for: where readings cannot tell the two apart, neither hides the other.
 */
const OTHER_SIZE = 0.002;

/** The same for one point. */
const COMMON_AT_POINT: Readonly<Record<PointState["kind"], number>> = {
  spur: 0.03,
  terminal: 0.003,
  swapped: 0.01,
  off: 0.002,
};

/**
 * Cost of a hypothesis beside its misfit, as −2 ln: ln n for each size that is fitted (Schwarz), 2 ln of the number of
 * legs among which its leg is chosen, and −2 ln of how common it is. Conductors broken together are less common, by
 * what one broken conductor is.
 */
export function occam({ ring, cpc, points }: Hypothesis, readings: number, legs: number): number {
  const sizes = ownCount({ ring, points }) + points.filter(isSized).length;
  let cost = sizes * Math.log(readings) - 2 * Math.log(COMMON[ring.kind]);
  if ("leg" in ring) cost += 2 * Math.log(legs);
  if (cpc !== undefined) cost -= 2 * Math.log(OTHER_SIZE);
  if (ring.kind === "open") cost += 2 * (ring.conductors.length - 1) * Math.log(CONDUCTORS.length);
  for (const { kind } of points) cost -= 2 * Math.log(COMMON_AT_POINT[kind]);
  return cost;
}
