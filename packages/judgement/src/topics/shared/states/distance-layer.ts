import { all, any, held, is, not, yes } from "@good-grounds/core";
import type { SharedState } from "../shared-state.ts";

const SKILLED = is("who-comes", "skilled-only");

/**
 * Obstacles and placing out of reach: measures only under the control of skilled persons (410.3.5, 417.1), never in wet
 * or conductive places (Part 7 says so for baths, pools, saunas, farms and others). Reach counts long things and what can
 * be climbed (417.3); an obstacle has to stay where it is (417.2). Where anyone comes it is a contested point.
 */
export const DISTANCE_LAYER: SharedState = Object.freeze({
  id: "distance-layer",
  of: "a live part",
  words: "distance or an obstacle",
  values: Object.freeze({
    holds: { words: "keeps everybody off" },
    "one-event": {
      words: "keeps people off until somebody climbs or reaches over",
      when: not(all(SKILLED, any(is("arms-reach", "beyond"), is("obstacle", "secured")))),
    },
    gone: {
      words: "keeps nobody off",
      when: any(
        yes("wet-or-conductive"),
        all(is("arms-reach", "within"), is("obstacle", "none")),
        all(
          not(SKILLED),
          any(held("distance", "does-not-count"), all(is("arms-reach", "within"), not(is("obstacle", "secured")))),
        ),
      ),
    },
  }),
});
