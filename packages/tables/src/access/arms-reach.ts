import type { Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Directions in which arm's reach is counted. */
export const REACH_DIRECTIONS = ["upward", "sideways", "below-edge", "between-parts"] as const;
export type ReachDirection = (typeof REACH_DIRECTIONS)[number];

/** A distance of arm's reach. */
export interface ReachDistance {
  readonly direction: ReachDirection;
  readonly metres: number;
  readonly measured: string;
  readonly source: Source;
}

const FIGURE = source("BS 7671 Part 2, Figure 417", "2008 to 2018+A4", "memory", {
  doubt: "the definition was read, the distances were not",
});
const PARTS = source("BS 7671 417.3.1", "2008 to 2018+A4", "memory", {
  doubt: "the definition was read, the distances were not",
});

const ROWS: Readonly<Record<ReachDirection, ReachDistance>> = Object.freeze({
  upward: {
    direction: "upward",
    metres: 2.5,
    measured: "from the standing surface, whatever obstacle stands between (417.3.3)",
    source: FIGURE,
  },
  sideways: {
    direction: "sideways",
    metres: 1.25,
    measured: "from the edge of the standing surface, or from a rail or mesh of less than IP2X (417.3.2)",
    source: FIGURE,
  },
  "below-edge": {
    direction: "below-edge",
    metres: 0.75,
    measured: "below the standing surface and around its edge",
    source: FIGURE,
  },
  "between-parts": {
    direction: "between-parts",
    metres: 2.5,
    measured: "between parts at different potentials that can be touched at once",
    source: PARTS,
  },
});

/** Arm's reach in a direction, m. Where long or bulky things are handled, it is more (417.3.4). */
export function armsReach(direction: ReachDirection): ReachDistance {
  return ROWS[direction];
}
