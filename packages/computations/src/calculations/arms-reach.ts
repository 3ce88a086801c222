import { type Evidence, notKnown, published, TERM } from "@good-grounds/core";
import { armsReach as figure } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/**
 * How far one part lies beyond arm's reach from one level surface with a straight edge, m: the larger of what is left in
 * plan (1.25 m) and in height (2.5 m above the surface, or 0.75 m below its edge), negative within reach. A part stands
 * either above or below the surface: give the one or the other. What is handled lengthens every limit by its length
 * (417.3.4). Without barriers. The figures are from memory.
 */
export const armsReach = calculation({
  id: "arms-reach",
  title: "Distance beyond arm's reach from a standing surface",
  formula: "max(a − 1.25 m − l, h − 2.5 m − l), or d − 0.75 m − l below the edge",
  regulations: ["417.3.1", "417.3.4"],
  needs: {
    distance: asksQuantity(TERM.distanceFromEdge, "1.4 m"),
    height: asksQuantity(TERM.heightAboveSurface, "2.6 m"),
    depth: asksQuantity(TERM.depthBelowEdge, "0.8 m"),
    objects: asksQuantity(TERM.handledLength, "0 m"),
  },
  compute({ distance, height, depth, objects }, reckon) {
    const beyond = (value: Evidence<"metre">, limit: typeof SIDEWAYS) =>
      reckon.difference(TERM.reachClearance, value, reckon.sum(TERM.reachLimit, limit, objects));
    const aside = beyond(distance, SIDEWAYS);
    const [above, below] = [height.kind !== "not-known", depth.kind !== "not-known"];
    if (above && below) {
      const reason = "a part stands above the surface or below it: one of height and depth is to be left out";
      return {
        results: [notKnown(TERM.reachClearance, ["height"], "not-tabulated", reason)],
        remarks: [{ code: "above-and-below", words: reason }],
      };
    }
    const upright = below ? beyond(depth, BELOW) : beyond(height, UPWARD);
    return { results: [reckon.largest(TERM.reachClearance, aside, upright)], remarks: [] };
  },
  examples: [
    {
      name: "out of reach overhead",
      given: { distance: "0 m", height: "2.6 m", objects: "0 m" },
      values: { "reach-clearance": { value: 0.1, within: 1e-9 } },
      source: "2.6 − 2.5 = 0.1",
    },
    {
      name: "beside a platform, a ladder of 2 m handled",
      given: { distance: "3 m", height: "1 m", objects: "2 m" },
      values: { "reach-clearance": { value: -0.25, within: 1e-9 } },
      source: "3 − 1.25 − 2 = −0.25",
    },
    {
      name: "below the edge",
      given: { distance: "0.5 m", depth: "0.8 m", objects: "0 m" },
      values: { "reach-clearance": { value: 0.05, within: 1e-9 } },
      source: "0.8 − 0.75 = 0.05",
    },
    {
      name: "nothing said of what is handled",
      given: { distance: "3 m", height: "1 m" },
      missing: ["handled-length"],
      source: "input missing",
    },
  ],
});

const UPWARD = limitOf("upward");
const SIDEWAYS = limitOf("sideways");
const BELOW = limitOf("below-edge");

function limitOf(direction: Parameters<typeof figure>[0]) {
  const { metres, measured, source } = figure(direction);
  return published(TERM.armsReach, metres, source, `${direction}: ${measured}`);
}
