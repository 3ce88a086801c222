import type { Conclusion, Reckoner } from "@good-grounds/core";
import type { Calculation } from "../check.ts";
import type { Given, Needs } from "../need.ts";

/** The protective provisions that can stand between a person and harm. */
export const PROVISIONS = [
  "insulation",
  "barriers-and-enclosures",
  "obstacles",
  "fault-protection",
  "additional-protection",
  "overcurrent-protection",
  "thermal-protection",
  "isolation",
] as const;
export type Provision = (typeof PROVISIONS)[number];

/**
 * Tells from facts and readings whether a protective provision holds: met where it does, not met where it does not, open
 * where something is missing that would settle it. It looks at nothing but what it is given.
 */
export interface Assessor<N extends Needs = Needs> extends Omit<Calculation<N>, "compute"> {
  readonly provision: Provision;
  readonly conclude: (given: Given<N>, reckon: Reckoner) => Conclusion;
}

/** States an assessor; the type parameter follows from its needs. */
export function assessor<const N extends Needs>(definition: Assessor<N>): Assessor<N> {
  return Object.freeze(definition);
}
