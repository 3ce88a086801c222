import { withoutCommonOffsets } from "../common-offset.ts";
import { MeanRatio } from "../evidence.ts";
import { type Look, RATIO_SHOWN_BELOW } from "../look.ts";
import { deadFit, liveFit, ROW_FIT_ASSUMED } from "../row-fit.ts";
import { CABLE_ASSUMED, type Row } from "../rows.ts";
import { leavesOf, number, timesOf } from "../words.ts";

/** Rows further apart than this are not compared: lists longer than that are not written by hand from one sheet. */
const MOST_APART = 60;

type Columns = "whole rows" | "the dead readings" | "Zs";
/** What changes places, whole rows as often as single columns. */
const COLUMNS: readonly (readonly [Columns, number])[] = [
  ["whole rows", 0.5],
  ["the dead readings", 0.25],
  ["Zs", 0.25],
];

/** ln likelihood of two circuits with what was written to either, or with it changed over. */
function logFit(a: Row, b: Row, swapped: Columns | undefined): number {
  const dead = swapped === undefined || swapped === "Zs" ? ([a, b] as const) : ([b, a] as const);
  const live = swapped === undefined || swapped === "the dead readings" ? ([a, b] as const) : ([b, a] as const);
  return deadFit(a, dead[0]) + deadFit(b, dead[1]) + liveFit(a, dead[0], live[0].zs) + liveFit(b, dead[1], live[1].zs);
}

interface Swap {
  readonly a: Row;
  readonly b: Row;
  readonly columns: Columns;
  readonly ratio: number;
}

/** Two circuits of a board whose readings fit each other's cables and not their own. */
export const swappedRows: Look = {
  id: "swapped-rows",
  shownBelow: RATIO_SHOWN_BELOW,
  title: "Two rows may have changed places",
  test: "Holds the readings of every two circuits of a board against their own cables and loops and against each other's, and compares how well they fit: whole rows, the dead readings alone, and Zs alone.",
  assumed: [CABLE_ASSUMED, ROW_FIT_ASSUMED],
  innocent: [
    "the circuits were renumbered and the descriptions changed over",
    "the sizes or lengths of the cables were written to the wrong circuit",
    "faults in both circuits",
  ],
  look({ rows: written, installation }) {
    const rows = withoutCommonOffsets(written);
    const ratio = new MeanRatio();
    let best: Swap | undefined;
    for (const board of installation.boards.keys()) {
      const here = rows.filter((row) => row.board === board && row.cable !== undefined);
      for (const [i, a] of here.entries()) {
        for (const b of here.slice(i + 1, i + 1 + MOST_APART)) {
          const asWritten = logFit(a, b, undefined);
          for (const [columns, weight] of COLUMNS) {
            const log = logFit(a, b, columns) - asWritten;
            ratio.add(log, weight);
            if (best === undefined || log > best.ratio) best = { a, b, columns, ratio: log };
          }
        }
      }
    }
    if (best === undefined) return { because: "no board has two circuits whose cables are known" };
    const { a, b, columns } = best;
    return [
      {
        words: `The readings of ${a.name} and ${b.name} fit each other's cables and not their own: ${columns} may have changed places.`,
        numbers: [
          number("what their cables let expect, R1+R2", [a, b].map(expected).join(" and ")),
          number("how much better they fit changed over", timesOf(best.ratio)),
        ],
        readings: leavesOf([a, b].flatMap((row) => [row.r1, row.r2, row.r1r2, row.zs])),
        chance: ratio.chance,
      },
    ];
  },
};

/** What a cable lets expect at its furthest point, in words. */
function expected({ cable, ring }: Row): string {
  if (cable === undefined) return "not known";
  return `${((cable.line + cable.cpc) * (ring ? 0.25 : 1)).toFixed(2)} Ω`;
}
