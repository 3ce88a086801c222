import { sameShown } from "../equal.ts";
import type { Found, Job, Look } from "../look.ts";
import { REPEATABILITY_ASSUMED } from "../repeatability.ts";
import type { Figure, Row } from "../rows.ts";
import { atLeastOf, sameDigits } from "../statistics/chances.ts";
import { leavesOf, named, number } from "../words.ts";

/** The three readings of a circuit that make one sum. */
interface Sum {
  readonly row: Row;
  readonly zs: Figure;
  readonly before: Figure;
  readonly r1r2: Figure;
}

/** Zs, R1+R2 and the loop before the circuit, from Zdb or from Ze. */
export function sumsOf(rows: readonly Row[], from: "zdb" | "ze"): readonly Sum[] {
  return rows.flatMap((row) => {
    const before = from === "ze" ? row.ze : row.before;
    const { zs, r1r2 } = row;
    return before === undefined || zs === undefined || r1r2 === undefined ? [] : [{ row, zs, before, r1r2 }];
  });
}

/**
 * The chance that one circuit's Zs is the sum to the digit, at the greatest: the loop before it may itself be off, which
 * only makes it less.
 */
const exactChance = ({ zs, r1r2 }: Sum) => sameDigits(Math.hypot(zs.repeat, r1r2.repeat), zs.resolution);

const isExact = ({ zs, before, r1r2 }: Sum) =>
  sameShown(before.resolution, zs.resolution, zs.resolution) &&
  sameShown(r1r2.resolution, zs.resolution, zs.resolution) &&
  sameShown(before.value + r1r2.value, zs.value, zs.resolution);

/** Whether R1+R2 was written down after Zs, or without a time where Zs has one: it cannot have been known before. */
const isLater = ({ zs, r1r2 }: Sum) => {
  const [live, dead] = [zs.leaf.detail.taken.at, r1r2.leaf.detail.taken.at];
  return live !== undefined && (dead === undefined || Date.parse(dead) > Date.parse(live));
};

/** Sums that come out to the digit more often than loop readings repeat. `later`: those with R1+R2 written after Zs. */
export function exactSums(job: Job, later: boolean): readonly Found[] {
  const tried = (["zdb", "ze"] as const).map((from) => {
    const all = sumsOf(job.rows, from);
    const exact = all.filter(isExact);
    return { from, all, exact, chance: Math.min(1, 2 * atLeastOf(all.map(exactChance), exact.length)) };
  });
  const [best] = tried.sort((a, b) => a.chance - b.chance);
  if (best === undefined || best.exact.length === 0) return [];
  const { all, exact, chance, from } = best;
  if (exact.filter(isLater).length * 2 > exact.length !== later) return [];
  const loop = from === "ze" ? "Ze" : "Zdb";
  return [
    {
      words: later
        ? `R1+R2 is Zs − ${loop} to the last digit on ${exact.length} of ${all.length} circuits, and was written down after Zs: ${named(exact.map(({ row }) => row))}.`
        : `Zs is ${loop} + (R1+R2) to the last digit on ${exact.length} of ${all.length} circuits: ${named(exact.map(({ row }) => row))}. Either Zs was added up or R1+R2 was worked back from it.`,
      numbers: [
        number("circuits with all three readings", String(all.length)),
        number("equal to the last digit", String(exact.length)),
        number("expected at most from repeatability", all.reduce((sum, one) => sum + exactChance(one), 0).toFixed(1)),
      ],
      readings: exact.flatMap(({ zs, before, r1r2 }) => leavesOf([zs, before, r1r2])),
      chance,
    },
  ];
}

/** Zs that is the loop before the circuit plus R1+R2 to the last digit on more circuits than measuring gives. */
export const zsSum: Look = {
  id: "zs-sum",
  title: "Zs comes out as a sum to the last digit",
  test: "Counts circuits where Zs = Zdb + (R1+R2), or Ze + (R1+R2), to the last digit, and compares the count with what the repeatability of loop readings allows.",
  assumed: [REPEATABILITY_ASSUMED],
  innocent: [
    "Zs was calculated because a live test was not safe or not possible: say so in the method of the reading",
    "R1+R2 was worked out from Zs on circuits whose ends could not be joined: say so in the method of the reading",
  ],
  look: (job) =>
    sumsOf(job.rows, "zdb").length + sumsOf(job.rows, "ze").length === 0
      ? { because: "no circuit has Zs, R1+R2 and the loop before it" }
      : exactSums(job, false),
};
