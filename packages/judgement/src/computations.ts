import { CALCULATIONS } from "./calculations/index.ts";
import type { Calculation, Check } from "./check.ts";
import { CHECKS } from "./checks/index.ts";
import { LOOKUPS } from "./lookups/index.ts";

/** Everything that can be computed alone with figures given by hand. */
export type Computation = Check | Calculation;

/** Every check, calculation and table look-up by id. */
export const COMPUTATIONS: ReadonlyMap<string, Computation> = new Map<string, Computation>(
  [...CHECKS, ...CALCULATIONS, ...LOOKUPS].map((one) => [one.id, one] as const),
);
