import { sameShown } from "../equal.ts";
import { MeanRatio } from "../evidence.ts";
import type { Look } from "../look.ts";
import { CABLE_ASSUMED, type Figure, type Row } from "../rows.ts";
import { leavesOf, number } from "../words.ts";

/** R1+R2 does not fit its cable, in sound work: one in a thousand. */
const ODD = 1e-3;
/** Deviations from which R1+R2 does not fit its cable. */
const OFF = 3.5;
/** Deviations within which it does. */
const FITS = 2.5;
/** Rows a copy is looked for above and below. */
const MOST_APART = 60;
/** A reading of another circuit that is no copy lies anywhere over so many times its value. */
const ANYWHERE = 2 * Math.LN10;

interface Copy {
  readonly row: Row;
  readonly of: Row;
  readonly alike: readonly (readonly [Figure, Figure])[];
  readonly ratio: number;
}

/** Readings of resistance that stand on both rows. */
function pairsOf(row: Row, of: Row): readonly (readonly [Figure, Figure])[] {
  return (["r1", "rn", "r2", "r1r2", "zs"] as const).flatMap((what) => {
    const [own, other] = [row[what], of[what]];
    return own === undefined || other === undefined ? [] : [[own, other] as const];
  });
}

/** How many deviations R1+R2 is from what the cable lets expect; 0 where there is none of them. */
function apart({ r1r2, cable, ring }: Row): number {
  if (r1r2 === undefined || cable === undefined) return 0;
  const part = (cable.line + cable.cpc) * (ring ? 1 / 4 : 1);
  return Math.abs(r1r2.value - part) / Math.hypot(r1r2.doubt, part * Math.hypot(cable.spread, ring ? 0.15 : 0));
}

function copyOf(row: Row, of: Row, rows: number): Copy | undefined {
  const alike = pairsOf(row, of);
  if (alike.length < 2 || of.board !== row.board || apart(of) > FITS) return undefined;
  let log = -Math.log(ODD * rows);
  for (const [i, [own, other]] of alike.entries()) {
    if (!sameShown(own.value, other.value, own.resolution)) return undefined;
    // One that is alike may be chance; the others of a row follow from it, all but what the instrument adds.
    const wide = i === 0 ? own.value * ANYWHERE : Math.sqrt(2 * Math.PI) * own.doubt;
    log += Math.max(0, Math.log(wide / own.resolution));
  }
  return { row, of, alike, ratio: log };
}

/** All readings of a circuit equal those of another to the digit, and its own cable lets expect others. */
export const copiedRow: Look = {
  id: "copied-row",
  title: "A whole row may have been copied from another circuit",
  test: "Looks for a circuit whose readings all equal those of another circuit to the last digit, two of them or more, where R1+R2 fits the other's cable and not its own.",
  assumed: [CABLE_ASSUMED, "one R1+R2 in a thousand does not fit its cable; common practice"],
  innocent: [
    "a row taken over to be filled in later",
    "two circuits that happen to read alike, and a length that is not what was written",
  ],
  look({ rows }) {
    if (rows.every(({ cable, r1r2 }) => cable === undefined || r1r2 === undefined))
      return { because: "no circuit has R1+R2 and its cable" };
    const ratio = new MeanRatio();
    let best: Copy | undefined;
    for (const [i, row] of rows.entries()) {
      ratio.addNothing(1);
      if (apart(row) < OFF) continue;
      for (const of of rows.slice(Math.max(0, i - MOST_APART), i + MOST_APART + 1)) {
        const copy = of === row ? undefined : copyOf(row, of, Math.min(rows.length, 2 * MOST_APART));
        if (copy === undefined) continue;
        ratio.add(copy.ratio, 1);
        if (best === undefined || copy.ratio > best.ratio) best = copy;
      }
    }
    if (best === undefined) return [];
    const { row, of, alike } = best;
    const shown = alike.map(([own]) => own.leaf.detail.text).join(", ");
    return [
      {
        words: `${row.name}: all readings (${shown}) are those of ${of.name} to the digit, and its own cable lets expect others.`,
        numbers: [number("readings that are the same", `${alike.length}`)],
        readings: leavesOf(alike.flat()),
        chance: ratio.chance,
      },
    ];
  },
};
