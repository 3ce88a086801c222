export {
  BREAKER_RATINGS,
  BREAKER_TYPES,
  type BreakerType,
  breakerType,
  SHORTEST_BREAKER_TIME,
} from "./breaker-types.ts";
export * from "./breaking-capacity.ts";
export * from "./conventional-currents.ts";
export * from "./device.ts";
export * from "./disconnection-time.ts";
export * from "./energy-limit.ts";
export * from "./first-loop.ts";
export { FUSES, type FuseRow } from "./fuses/index.ts";
export { leastMeltingEnergy } from "./fuses/melting-energy.ts";
export * from "./grading.ts";
export { operatingCurrent } from "./operating-current.ts";
export * from "./printed-limit.ts";
export * from "./time-current.ts";
