import { withoutCommonOffsets } from "../common-offset.ts";
import { MeanRatio } from "../evidence.ts";
import { type Look, RATIO_SHOWN_BELOW } from "../look.ts";
import { deadFit, liveFit, ROW_FIT_ASSUMED } from "../row-fit.ts";
import { CABLE_ASSUMED, type Row } from "../rows.ts";
import { leavesOf, named, number, timesOf } from "../words.ts";

/** Rows a shift has at the least: two that change places are another matter. */
const LEAST_ROWS = 3;

type Columns = "the readings" | "the dead readings" | "Zs";

interface Shift {
  readonly rows: readonly Row[];
  readonly columns: Columns;
  readonly by: 1 | -1;
  readonly ratio: number;
}

/** By how much what is written in a row fits the circuit `owner` better than the row's own circuit. */
function gain(row: Row, owner: Row, columns: Columns): number {
  switch (columns) {
    case "the readings":
      return deadFit(owner, row) - deadFit(row, row) + liveFit(owner, row, row.zs) - liveFit(row, row, row.zs);
    case "the dead readings":
      // The owner's Zs stays where it is and is explained by the dead readings that belong to it.
      return deadFit(owner, row) - deadFit(row, row) + liveFit(owner, row, owner.zs) - liveFit(owner, owner, owner.zs);
    case "Zs":
      return liveFit(owner, owner, row.zs) - liveFit(row, row, row.zs);
  }
}

/** The last row against the direction keeps its own Zs but loses the dead readings it was explained by. */
function loss(first: Row): number {
  return liveFit(first, undefined, first.zs) - liveFit(first, first, first.zs);
}

/** Readings that fit the circuit one row up or down, for three rows or more. */
export const shiftedRows: Look = {
  id: "shifted-rows",
  shownBelow: RATIO_SHOWN_BELOW,
  title: "The schedule may have slipped by a row",
  test: "Holds the readings of three or more successive circuits against the cables and loops of the circuits one row up, and one row down, and compares how well they fit with how they fit their own: all readings, the dead ones alone, and Zs alone.",
  assumed: [CABLE_ASSUMED, ROW_FIT_ASSUMED],
  innocent: [
    "circuits were renumbered after the readings were taken",
    "a spare way was left out on one list and not on the other",
  ],
  look({ rows: written, installation }) {
    const rows = withoutCommonOffsets(written);
    const ratio = new MeanRatio();
    let best: Shift | undefined;
    let looked = false;
    for (const board of installation.boards.keys()) {
      const here = rows.filter((row) => row.board === board);
      looked ||= here.length >= LEAST_ROWS && here.some(({ cable }) => cable !== undefined);
      for (const columns of ["the readings", "the dead readings", "Zs"] as const) {
        for (const by of [1, -1] as const) {
          const each = here.map((row, i) => {
            const owner = here[i + by];
            return owner === undefined ? null : gain(row, owner, columns);
          });
          for (let from = 0; from < here.length; from++) {
            let sum = columns === "the dead readings" && by === 1 ? loss(here[from] as Row) : 0;
            for (let to = from; to < here.length; to++) {
              const more = each[to];
              if (more === null || more === undefined) break;
              sum += more;
              if (to - from + 1 < LEAST_ROWS) continue;
              const log = sum + (columns === "the dead readings" && by === -1 ? loss(here[to] as Row) : 0);
              ratio.add(log);
              if (best === undefined || log > best.ratio)
                best = { rows: here.slice(from, to + 1), columns, by, ratio: log };
            }
          }
        }
      }
    }
    if (!looked) return { because: "no board has three circuits whose cables are known" };
    if (best === undefined) return [];
    return [
      {
        words: `From ${best.rows[0]?.name} on, ${best.columns} of ${best.rows.length} rows fit the circuit one row ${best.by === 1 ? "further down" : "further up"} and not their own: ${named(best.rows)}.`,
        numbers: [
          number("rows", String(best.rows.length)),
          number("how much better they fit there", timesOf(best.ratio)),
        ],
        readings: leavesOf(best.rows.flatMap((row) => [row.r1, row.r2, row.r1r2, row.zs])),
        chance: ratio.chance,
      },
    ];
  },
};
