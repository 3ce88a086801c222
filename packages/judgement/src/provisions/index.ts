export { type Assessor, assessor, PROVISIONS, type Provision } from "./assessor.ts";
export { ASSESSORS } from "./list.ts";
export { type BehindOpening, fingerReach, type ProbeReach } from "./openings/finger-reach.ts";
export { type FingerPosture, fingerPosture } from "./openings/posture.ts";
export { sphereReach, straightReach } from "./openings/straight-reach.ts";
export * from "./reach/index.ts";
