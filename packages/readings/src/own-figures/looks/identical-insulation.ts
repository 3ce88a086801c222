import { sameShown } from "../equal.ts";
import { grouped, largestOf } from "../grouped.ts";
import type { Look } from "../look.ts";
import type { Figure, Row } from "../rows.ts";
import { atLeastOf, sameDigits, someAlike } from "../statistics/chances.ts";
import { leavesOf, named, number } from "../words.ts";

interface Reading {
  readonly row: Row;
  readonly figure: Figure;
}

/** Insulation resistances that are there, on a logarithmic scale, spread at least this much (as a factor e^0.4). */
const SPREAD = 0.4;

/** Displays end at round figures; a value at the end of the range may stand without its ">". Ω. */
const RANGE_ENDS = new Set(
  [50, 99.9, 100, 199, 199.9, 200, 299, 299.9, 300, 499, 500, 550, 999, 1000, 1999, 2000].map((n) => n * 1e6),
);

/** Steps people and displays write values in, in digits. */
const STEPS = [100, 50, 20, 10, 5, 2, 1];
/** Different values it takes to tell their step. */
const LEAST_DIFFERENT = 3;

/** The steps in which values were really written down, by the resolution shown: round numbers repeat more easily. */
function stepsOf(figures: readonly Figure[]): ReadonlyMap<number, number> {
  const digits = new Map<number, Set<number>>();
  for (const { value, resolution } of figures) {
    digits.set(resolution, (digits.get(resolution) ?? new Set()).add(Math.round(value / resolution)));
  }
  return new Map(
    [...digits].map(([resolution, different]) => {
      const common = different.size < LEAST_DIFFERENT ? 1 : [...different].reduce(divisor, 0);
      return [resolution, resolution * (STEPS.find((step) => common % step === 0) ?? 1)];
    }),
  );
}

function divisor(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y > 0) [x, y] = [y, x % y];
  return x;
}

/** The same finite insulation resistance on several circuits, or in both tests of the same circuits. */
export const identicalInsulation: Look = {
  id: "identical-insulation",
  title: "The same finite insulation resistance again and again",
  test: "Counts finite insulation resistances that are alike to the last digit, on several circuits or in both tests of one, and bounds the chance of it for resistances spread as insulation is. Ends of ranges do not count.",
  assumed: ["sound insulation is spread by at least a factor of 1.5 either way; common practice"],
  innocent: [
    'the value is the end of the display, written without ">"',
    "circuits were tested together and the one reading written to each: say so in the method",
    "values rounded to the same round number",
  ],
  look(job) {
    const all = job.rows.flatMap((row): readonly Reading[] => row.insulation.map((figure) => ({ row, figure })));
    const finite = all.filter(({ figure }) => !RANGE_ENDS.has(Math.round(figure.value)));
    if (finite.length < 3) return { because: "fewer than three finite insulation resistances" };
    const steps = stepsOf(finite.map(({ figure }) => figure));
    /** The greatest chance that an insulation resistance of this size shows these digits. */
    const digitChance = ({ value, resolution }: Figure) =>
      Math.max(1e-6, sameDigits(SPREAD * value, steps.get(resolution) ?? resolution));
    const largest = largestOf(grouped(finite, ({ figure }) => Math.round(figure.value)));
    const likeliest = finite.reduce((most, { figure }) => Math.max(most, digitChance(figure)), 0);
    const several = someAlike(largest.length, finite.length, likeliest);
    const both = job.rows.flatMap((row) => {
      const [a, b] = row.insulation;
      if (a === undefined || b === undefined) return [];
      if (RANGE_ENDS.has(Math.round(a.value)) || RANGE_ENDS.has(Math.round(b.value))) return [];
      return [{ row, chance: digitChance(a), equal: sameShown(a.value, b.value, a.resolution) }];
    });
    const equal = both.filter((one) => one.equal);
    const inBoth =
      equal.length === 0
        ? 1
        : atLeastOf(
            both.map(({ chance }) => chance),
            equal.length,
          );
    const rows = several <= inBoth ? [...new Set(largest.map(({ row }) => row))] : equal.map(({ row }) => row);
    return [
      {
        words:
          several <= inBoth
            ? `${largest[0]?.figure.leaf.detail.text} stands ${largest.length} times: ${named(rows)}.`
            : `Both insulation tests show the same on ${equal.length} of ${both.length} circuits: ${named(rows)}.`,
        numbers: [
          number("finite values", String(finite.length)),
          number("alike", String(several <= inBoth ? largest.length : 2 * equal.length)),
          number("chance of one value at the greatest", likeliest.toPrecision(2)),
        ],
        readings: rows.flatMap(({ insulation }) => leavesOf(insulation)),
        chance: Math.min(1, 2 * Math.min(several, inBoth)),
      },
    ];
  },
};
