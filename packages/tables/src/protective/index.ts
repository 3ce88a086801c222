export * from "./adiabatic-k.ts";
export * from "./buried-conductor.ts";
export * from "./live-k.ts";
export * from "./main-bonding.ts";
export * from "./selection.ts";
export * from "./separate-conductor.ts";
export * from "./standard-sizes.ts";
export * from "./supplementary-bonding.ts";
