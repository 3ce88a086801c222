import {
  GROUPINGS,
  type Grouping,
  type NotKnown,
  type Published,
  published,
  type Source,
  TERM,
} from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { readOff } from "./read-off.ts";

const TABLE = "BS 7671 Table 4C1";
const EDITIONS = "2008 to 2018+A4";
const RECALLED = source(TABLE, EDITIONS, "memory");
const AGREES = source(TABLE, EDITIONS, "memory", { doubt: "agrees with the simplified table of IEC 60364-5-52" });
const DIFFERS = source(TABLE, EDITIONS, "memory", {
  doubt: "the simplified table of IEC 60364-5-52 rounds to 0.80, 0.75 and 0.70",
});
const SEEN = source(`${TABLE}, row 1, quoted in a trade discussion`, EDITIONS, "published");
const ALONE = source(TABLE, EDITIONS, "derived", { formula: "1 for one circuit by itself" });

/** Numbers of circuits the table has columns for. */
export const GROUP_SIZES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 16, 20] as const;

/** Rating factors by arrangement; shorter rows end at nine circuits. */
export const GROUPING_FACTORS: Readonly<Record<Grouping, readonly number[]>> = Object.freeze({
  bunched: [1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5, 0.45, 0.41, 0.38],
  "single-layer-surface": [1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.7],
  "single-layer-tray": [1, 0.88, 0.82, 0.77, 0.75, 0.73, 0.73, 0.72, 0.72],
  "single-layer-ladder": [1, 0.87, 0.82, 0.8, 0.8, 0.79, 0.79, 0.78, 0.78],
});

const BUNCHED_AGREEING: ReadonlySet<number> = new Set([2, 3, 9, 12]);

function sourceOf(arrangement: Grouping, circuits: number): Source {
  if (circuits === 1) return ALONE;
  if (arrangement === "single-layer-surface") return DIFFERS;
  if (arrangement !== "bunched") return RECALLED;
  return circuits === 8 ? SEEN : BUNCHED_AGREEING.has(circuits) ? AGREES : RECALLED;
}

const columns = (arrangement: Grouping) =>
  GROUP_SIZES.flatMap((circuits, i) => {
    const factor = GROUPING_FACTORS[arrangement][i];
    if (factor === undefined) return [];
    const from = sourceOf(arrangement, circuits);
    const row = `${arrangement}, ${circuits} circuits`;
    const exact = published(TERM.groupingFactor, factor, from, row);
    const between = published(TERM.groupingFactor, factor, readOff(from, "the next larger number of circuits"), row);
    return [{ circuits, exact, between }];
  });

const COLUMNS = Object.fromEntries(GROUPINGS.map((arrangement) => [arrangement, columns(arrangement)]));

/**
 * Rating factor Cg for a number of circuits. Between the columns of the table the larger number is taken and marked as
 * derived; above the last column of the arrangement there is none.
 */
export function groupingFactor(arrangement: Grouping, circuits: number): Published<"ratio"> | NotKnown<"ratio"> {
  if (circuits >= 1) {
    for (const column of COLUMNS[arrangement] ?? []) {
      if (circuits === column.circuits) return column.exact;
      if (circuits < column.circuits) return column.between;
    }
  }
  return notTabulated(TERM.groupingFactor, "Table 4C1", `${circuits} circuits, ${arrangement}`);
}

/** Part of its grouped rating up to which a circuit may be left out of the number of circuits. */
export const lightlyLoadedPart = published(
  TERM.loadRatio,
  0.3,
  source("BS 7671 Appendix 4, notes to the grouping tables", EDITIONS, "memory"),
  "circuit carrying at most 30 % of its grouped rating",
);
