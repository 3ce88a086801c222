import {
  type Cut,
  type Place,
  placingOutOfReach,
  type ReachScene,
  reachPicture,
  type Spot,
} from "@good-grounds/computations";
import { Reckoner } from "@good-grounds/core";
import { armsReachDrawing } from "@good-grounds/report";
import { ENGINE } from "../../words/engine.ts";
import type { ReachAsked, ReachView } from "../reach-view.ts";

/** A floor long enough that only the edge beside the part matters, m. */
const FLOOR: readonly Spot[] = [
  [0, 0],
  [4, 0],
  [4, 4],
  [0, 4],
];
const EDGE = 4;
/** Where the cut through the scene is taken. */
const MIDDLE = 2;

/** Whether a bare part beside a floor lies out of arm's reach, with things handled there, drawn in elevation. */
export function reachOf({ height, beside, objects }: ReachAsked): ReachView {
  const at: Place = [EDGE + beside, MIDDLE, height];
  const scene: ReachScene = {
    tolerance: 0.02,
    objects,
    attendance: "ordinary",
    surfaces: [{ name: ENGINE.reachFloor, height: 0, outline: FLOOR, solid: true, entries: [] }],
    parts: [{ name: ENGINE.reachPart, potential: "L1", live: true, shape: { kind: "point", at } }],
    barriers: [],
  };
  const finding = placingOutOfReach(scene, new Reckoner(true));
  const bare = placingOutOfReach({ ...scene, objects: 0 }, new Reckoner(true));
  const cut: Cut = {
    kind: "elevation",
    from: [EDGE - 2.5, MIDDLE],
    to: [EDGE + Math.max(2.2, beside + 0.6), MIDDLE],
    low: Math.min(-1, height - 0.5),
    high: Math.max(3.2, height + 0.6),
  };
  const isOut = (one: typeof finding) => one.arrangement.verdict === "met";
  return {
    svg: armsReachDrawing(reachPicture(scene, finding, cut, ENGINE.reachTitle)),
    answer: isOut(finding) ? "beyond" : isOut(bare) ? "long-objects" : "in-reach",
  };
}
