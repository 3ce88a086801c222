import { term } from "./term.ts";

/** Openings of enclosures, what lies behind them, and the probes that stand for people. */
export const OPENING = {
  openingWidth: term("opening-width", "width of the opening", "w", "metre"),
  openingHeight: term("opening-height", "height of the opening", "h", "metre"),
  leastWidth: term("least-width", "least width of the opening", "w,min", "metre"),
  greatestWidth: term("greatest-width", "greatest width of the opening", "w,max", "metre"),
  depthToLive: term("depth-to-live", "depth of the live part behind the face of the opening", "d", "metre"),
  offsetToLive: term(
    "offset-to-live",
    "distance of the live part sideways from the edge of the opening, nothing where it lies behind it",
    "s",
    "metre",
  ),
  probeDiameter: term("probe-diameter", "diameter of a probe", "D", "metre"),
  probeReach: term("probe-reach", "depth that a probe reaches at that offset", "d,max", "metre"),
  strippedLength: term("stripped-length", "length of cable without its sheath", "L", "metre"),
  clearance: term("clearance", "distance to material that burns or holds heat", "a", "metre"),
  neededClearance: term(
    "needed-clearance",
    "distance from material that burns, as the maker asks it",
    "a,min",
    "metre",
  ),
} as const;
