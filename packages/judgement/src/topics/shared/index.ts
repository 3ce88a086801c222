export { TOUCH_FACTS } from "./facts/index.ts";
export { TOUCH_POINTS } from "./points/index.ts";
export { type SharedState, stateIs } from "./shared-state.ts";
export { ACCESS_LAYER } from "./states/access-layer.ts";
export { BASIC_PROTECTION_STATE } from "./states/basic-protection.ts";
export { COVERING_LAYER } from "./states/covering-layer.ts";
export { DISTANCE_LAYER } from "./states/distance-layer.ts";
export { ENCLOSURE_LAYER } from "./states/enclosure-layer.ts";
