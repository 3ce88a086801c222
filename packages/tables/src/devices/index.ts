export * from "./breaker-types.ts";
export * from "./breaking-capacity.ts";
export * from "./device.ts";
export * from "./disconnection-time.ts";
export * from "./energy-limit.ts";
export { FUSES, type FuseRow } from "./fuses/index.ts";
export * from "./operating-current.ts";
export * from "./printed-limit.ts";
export * from "./time-current.ts";
