import type { Calculation } from "../check.ts";

/** Tables as computations of their own. */
export const LOOKUPS: readonly Calculation[] = Object.freeze([]);
