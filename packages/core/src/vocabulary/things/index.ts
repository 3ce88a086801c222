export * from "./bond.ts";
export * from "./device-state.ts";
export * from "./enclosure.ts";
export * from "./joint.ts";
export * from "./place.ts";
export * from "./section.ts";
