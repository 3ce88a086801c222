import { type Grouping, type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const M = source("BS 7671 Table 4C1", "2008 to 2018+A4", "memory", {
  doubt: "0.52 at eight circuits was seen; 0.80, 0.70, 0.50 and 0.45 agree with the simplified IEC table",
});

/** Numbers of circuits the table has columns for. */
export const GROUP_SIZES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 16, 20] as const;

/** Rating factors by arrangement; shorter rows end at nine circuits. */
export const GROUPING_FACTORS: Readonly<Record<Grouping, readonly number[]>> = Object.freeze({
  bunched: [1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5, 0.45, 0.41, 0.38],
  "single-layer-surface": [1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.7],
  "single-layer-tray": [1, 0.88, 0.82, 0.77, 0.75, 0.73, 0.73, 0.72, 0.72],
  "single-layer-ladder": [1, 0.87, 0.82, 0.8, 0.8, 0.79, 0.79, 0.78, 0.78],
});

const NODES = new Map<string, Published<"ratio">>(
  Object.entries(GROUPING_FACTORS).flatMap(([arrangement, factors]) =>
    factors.map((factor, i) => [
      `${arrangement} ${GROUP_SIZES[i]}`,
      published(TERM.groupingFactor, factor, M, `${arrangement}, ${GROUP_SIZES[i]} circuits`),
    ]),
  ),
);

/** Rating factor Cg for a number of circuits. Between the columns of the table the larger number is taken. */
export function groupingFactor(arrangement: Grouping, circuits: number): Published<"ratio"> | NotKnown<"ratio"> {
  const column = GROUP_SIZES.find((size) => circuits <= size);
  const found = column === undefined || circuits < 1 ? undefined : NODES.get(`${arrangement} ${column}`);
  return found ?? notTabulated(TERM.groupingFactor, "Table 4C1", `${circuits} circuits, ${arrangement}`);
}
