export * from "./cable.ts";
export { CONDUCTOR_TOLERANCE, perMetre, testFactor } from "./conductor.ts";
export * from "./doubted.ts";
export * from "./length.ts";
export * from "./loop.ts";
export * from "./misfit.ts";
export { normalCdf, normalDensity, twoSided } from "./normal.ts";
export { lengthFoundIn } from "./written-lengths.ts";
