import { isKnown } from "@good-grounds/core";
import { roundsTo, sameShown } from "../equal.ts";
import type { Look } from "../look.ts";
import { REPEATABILITY_ASSUMED } from "../repeatability.ts";
import type { Figure, Row } from "../rows.ts";
import { atLeastOf, sameDigits } from "../statistics/chances.ts";
import { leavesOf, named, number } from "../words.ts";

/** One reading of a ring that the others foretell: whether it is that to the digit, and how often measuring gives it. */
interface Share {
  readonly exact: boolean;
  readonly chance: number;
}

function share(figure: Figure | undefined, foretold: number | undefined, doubt: number): readonly Share[] {
  if (figure === undefined || foretold === undefined) return [];
  const { resolution, value, repeat } = figure;
  return [{ exact: roundsTo(foretold, value, resolution), chance: sameDigits(Math.hypot(repeat, doubt), resolution) }];
}

function sharesOf(row: Row): readonly Share[] {
  const { r1, rn, r2, r1r2, crossLineNeutral, crossLineCpc } = row;
  const { line, cpc } = row.circuit.cable;
  const ratio = isKnown(line) && isKnown(cpc) ? line.value / cpc.value : undefined;
  const quarter = (a: Figure | undefined, b: Figure | undefined) =>
    a === undefined || b === undefined
      ? undefined
      : { value: (a.value + b.value) / 4, doubt: Math.hypot(a.repeat, b.repeat) / 4 };
  const [neutral, protective] = [quarter(r1, rn), quarter(r1, r2)];
  const alike = rn !== undefined && r1 !== undefined && sameShown(rn.resolution, r1.resolution, rn.resolution);
  return [
    ...share(alike ? rn : undefined, r1?.value, r1?.repeat ?? 0),
    ...share(
      r2,
      ratio === undefined || r1 === undefined ? undefined : r1.value * ratio,
      (r1?.repeat ?? 0) * (ratio ?? 1),
    ),
    ...share(r1r2, protective?.value, protective?.doubt ?? 0),
    ...crossLineNeutral.flatMap((one) => share(one, neutral?.value, neutral?.doubt ?? 0)),
    ...crossLineCpc.flatMap((one) => share(one, protective?.value, protective?.doubt ?? 0)),
  ];
}

/** Ring readings that are exact shares of each other: rn = r1, r2 = r1 times the ratio of sizes, points exact quarters. */
export const ringShares: Look = {
  id: "ring-shares",
  title: "Ring readings are exact shares of each other",
  test: "Counts ring readings that equal what the others foretell to the last digit (rn = r1; r2 = r1 × line size ÷ cpc size; R1+R2 and the points a quarter of the sum), and compares the count with what repeatability allows.",
  assumed: [
    REPEATABILITY_ASSUMED,
    "at a ring with a smaller cpc only the middle reads the exact quarter; it is allowed everywhere",
  ],
  innocent: [
    "a short ring, where all readings lie within a digit or two",
    "a value worked out where a point could not be reached: say so in its method",
  ],
  look(job) {
    const rings = job.rows.filter(({ ring }) => ring).map((row) => ({ row, shares: sharesOf(row) }));
    const all = rings.flatMap(({ shares }) => shares);
    if (all.length === 0) return { because: "no ring has readings that foretell each other" };
    const exact = all.filter((one) => one.exact).length;
    const concerned = rings.filter(({ shares }) => shares.some((one) => one.exact)).map(({ row }) => row);
    return [
      {
        words: `${exact} of ${all.length} ring readings are exact shares of the others: ${named(concerned)}.`,
        numbers: [
          number("readings the others foretell", String(all.length)),
          number("equal to the last digit", String(exact)),
          number("expected at most from repeatability", all.reduce((sum, { chance }) => sum + chance, 0).toFixed(1)),
        ],
        readings: concerned.flatMap(({ r1, rn, r2, r1r2 }) => leavesOf([r1, rn, r2, r1r2])),
        chance: atLeastOf(
          all.map(({ chance }) => chance),
          exact,
        ),
      },
    ];
  },
};
