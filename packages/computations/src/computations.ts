import { CALCULATIONS } from "./calculations/index.ts";
import type { Calculation, Check } from "./check.ts";
import { CHECKS } from "./checks/index.ts";
import { LOOKUPS } from "./lookups/index.ts";
import type { Assessor } from "./provisions/assessor.ts";
import { ASSESSORS } from "./provisions/list.ts";

/** Everything that can be computed alone with figures given by hand. */
export type Computation = Check | Calculation | Assessor;

/** Every check, calculation, table look-up and assessor by id. */
export const COMPUTATIONS: ReadonlyMap<string, Computation> = new Map<string, Computation>(
  [...CHECKS, ...CALCULATIONS, ...LOOKUPS, ...ASSESSORS].map((one) => [one.id, one] as const),
);
