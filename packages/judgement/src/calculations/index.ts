import type { Calculation } from "../check.ts";

/** Computations without a verdict. */
export const CALCULATIONS: readonly Calculation[] = Object.freeze([]);
