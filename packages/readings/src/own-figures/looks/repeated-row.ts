import { sameShown } from "../equal.ts";
import { MeanRatio } from "../evidence.ts";
import type { Look } from "../look.ts";
import { CABLE_ASSUMED, type Figure, type Row } from "../rows.ts";
import { leavesOf, number } from "../words.ts";

/** A reading alone against Zs and cable which agree, in sound work: one in a thousand. */
const ODD = 1e-3;
/** By any factor up to ten either way: density on a logarithmic scale. */
const ANYWHERE = 1 / (2 * Math.LN10);
/** Deviations from which a reading does not fit, and within which it does. */
const OFF = 3.5;
const FITS = 2.5;
/** Rows a copy is looked for above and below. */
const MOST_APART = 60;
/** Half of the copies are of the row above or below. */
const NEAR = 0.5;

interface Copy {
  readonly row: Row;
  readonly of: Row;
  readonly what: string;
  readonly figure: Figure;
  readonly expected: number;
  readonly ratio: number;
}

/** R1+R2 and Zs of a circuit with what the other and the cable make of it; undefined where there is not enough. */
function storiesOf({ r1r2, zs, before, cable, ring }: Row) {
  if (r1r2 === undefined || zs === undefined || before === undefined || cable === undefined) return undefined;
  const part = (cable.line + cable.cpc) * (ring ? 1 / 4 : 1);
  const doubt = part * Math.hypot(cable.spread, ring ? 0.15 : 0);
  const off = (a: number, b: number, ...doubts: number[]) => Math.abs(a - b) / Math.hypot(...doubts);
  const between = off(zs.value, before.value + r1r2.value, zs.doubt, before.doubt, r1r2.doubt);
  return {
    part,
    zsExpected: before.value + part,
    /** Deviations between R1+R2 and Zs, R1+R2 and cable, Zs and cable. */
    between,
    dead: off(r1r2.value, part, r1r2.doubt, doubt),
    live: off(zs.value, before.value + part, zs.doubt, before.doubt, doubt),
  };
}

/** A reading that stands on another circuit too, to the digit, and belongs to neither the cable nor the other reading. */
export const repeatedRow: Look = {
  id: "repeated-row",
  title: "A reading may have been written to the wrong row as well",
  test: "Looks for an R1+R2, or a Zs, that equals another circuit's to the last digit and fits neither its own cable nor the other reading of its circuit, while those two agree with each other.",
  assumed: [
    CABLE_ASSUMED,
    "one sound reading in a thousand stands alone against a cable and another reading that agree; common practice",
  ],
  innocent: [
    "two circuits that happen to read alike, one of them with a fault",
    "a second way to earth",
    "the length of the cable is not what was written",
  ],
  look({ rows }) {
    const known = rows.map((row) => ({ row, stories: storiesOf(row) }));
    if (known.every(({ stories }) => stories === undefined))
      return { because: "no circuit has R1+R2, Zs, the loop before it and its cable" };
    const ratio = new MeanRatio();
    let best: Copy | undefined;
    for (const [i, { row, stories }] of known.entries()) {
      for (const what of ["R1+R2", "Zs"] as const) {
        const figure = what === "Zs" ? row.zs : row.r1r2;
        ratio.addNothing(1);
        if (figure === undefined || stories === undefined || stories.between < OFF) continue;
        const [own, other] = what === "Zs" ? [stories.live, stories.dead] : [stories.dead, stories.live];
        if (own < OFF || other > FITS) continue;
        const others = known.slice(Math.max(0, i - MOST_APART), i + MOST_APART + 1);
        for (const [k, { row: of }] of others.entries()) {
          const apart = Math.abs(k + Math.max(0, i - MOST_APART) - i);
          if (apart === 0 || of.board !== row.board) continue;
          const twin = what === "Zs" ? of.zs : of.r1r2;
          if (twin === undefined || !sameShown(twin.value, figure.value, figure.resolution)) continue;
          const near = apart === 1 ? NEAR / 2 : 0;
          const chosen = near + (1 - NEAR) / others.length;
          const log = Math.log(chosen / (ODD * ANYWHERE * (figure.resolution / figure.value)));
          ratio.add(log, 1);
          if (best === undefined || log > best.ratio)
            best = { row, of, what, figure, expected: what === "Zs" ? stories.zsExpected : stories.part, ratio: log };
        }
      }
    }
    if (best === undefined) return [];
    const { row, of, what, figure, expected } = best;
    return [
      {
        words: `${row.name}: ${what} is ${figure.leaf.detail.text}, the same as of ${of.name}; its cable and its other reading agree on about ${expected.toFixed(2)} Ω.`,
        numbers: [
          number("read", figure.leaf.detail.text),
          number("what cable and other reading foretell", `${expected.toFixed(2)} Ω`),
        ],
        readings: leavesOf([figure, what === "Zs" ? of.zs : of.r1r2, what === "Zs" ? row.r1r2 : row.zs, row.before]),
        chance: ratio.chance,
      },
    ];
  },
};
