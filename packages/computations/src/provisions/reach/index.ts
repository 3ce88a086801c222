export type { Least } from "./clearance.ts";
export {
  type PairFinding,
  type PartFinding,
  placingOutOfReach,
  REACH_QUESTION,
  type ReachFinding,
} from "./conclude.ts";
export { reachPicture } from "./picture.ts";
export { readScene, SCENE_LIMITS, type SceneRead } from "./read-scene.ts";
export * from "./scene.ts";
export { type Cut, reachOutline } from "./section.ts";
