import { term } from "./term.ts";

/** Distances of arm's reach and placing out of reach. */
export const REACH = {
  armsReach: term("arms-reach", "arm's reach", "", "metre"),
  handledLength: term("handled-length", "length of the longest thing handled", "", "metre"),
  reachLimit: term("reach-limit", "limit of reach with what is handled", "", "metre"),
  heightAboveSurface: term("height-above-surface", "height above the standing surface", "h", "metre"),
  depthBelowEdge: term("depth-below-edge", "depth below the edge of the standing surface", "d", "metre"),
  distanceFromEdge: term(
    "distance-from-edge",
    "horizontal distance from the edge of the standing surface",
    "a",
    "metre",
  ),
  reachClearance: term("reach-clearance", "distance outside the limit of reach", "", "metre"),
  distanceApart: term("distance-apart", "distance between two parts", "", "metre"),
} as const;
