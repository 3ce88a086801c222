import { isKnownFact } from "@good-grounds/core";
import { grouped, largestOf } from "../grouped.ts";
import type { Found, Look } from "../look.ts";
import { REPEATABILITY_ASSUMED } from "../repeatability.ts";
import type { Row } from "../rows.ts";
import { sameDigits, someAlike } from "../statistics/chances.ts";
import { named, number } from "../words.ts";

/** Part by which two cables of one size and length differ, one standard deviation. */
const CABLES_DIFFER = 0.01;
const LEAST_SISTERS = 3;

const ofReading = [
  { what: "R1+R2", of: ({ r1r2 }: Row) => r1r2 },
  { what: "Zs", of: ({ zs }: Row) => zs },
] as const;

/** What makes circuits sisters: one shape, one cable, one length, as written. */
function kindOf({ circuit }: Row): string {
  const { shape, cable } = circuit;
  const words = isKnownFact(shape) ? shape.word : "";
  return [words, ...[cable.line, cable.cpc, cable.length].map(({ low, high }) => `${low} ${high}`)].join("|");
}

/** The largest number of sisters with one value, and the chance of it. */
function lookAt(sisters: readonly Row[], groups: number): readonly Found[] {
  return ofReading.flatMap(({ what, of }) => {
    const read = sisters.flatMap((row) => {
      const figure = of(row);
      return figure === undefined ? [] : [{ row, figure }];
    });
    if (read.length < LEAST_SISTERS) return [];
    // In tenths of a milliohm, finer than any display: figures are the same whatever their resolution.
    const largest = largestOf(grouped(read, ({ figure }) => Math.round(figure.value * 1e4)));
    const first = largest[0]?.figure;
    if (first === undefined || largest.length < LEAST_SISTERS) return [];
    const most = sameDigits(Math.hypot(first.repeat, CABLES_DIFFER * first.value), first.resolution);
    return [
      {
        words: `${what} is ${first.leaf.detail.text} on ${largest.length} of ${read.length} circuits that are alike: ${named(largest.map(({ row }) => row))}.`,
        numbers: [
          number("circuits alike", String(read.length)),
          number("with the same value", String(largest.length)),
          number("chance of one value at the greatest", most.toPrecision(2)),
        ],
        readings: largest.map(({ figure }) => figure.leaf),
        chance: Math.min(1, groups * ofReading.length * someAlike(largest.length, read.length, most)),
      },
    ];
  });
}

/** Sister circuits that read closer to each other than one circuit read twice. */
export const littleSpread: Look = {
  id: "little-spread",
  title: "Sister circuits read too much alike",
  test: "Takes circuits of one shape, cable and length, counts those with the same R1+R2 or Zs to the last digit, and bounds the chance of it by the repeatability of readings and the spread of cables.",
  assumed: [
    REPEATABILITY_ASSUMED,
    "two cables of one size and length differ by 1 %, one standard deviation; common practice",
  ],
  innocent: [
    "one circuit was tested for all of them by agreement: say so in the method",
    "an instrument that shows only tenths of an ohm",
  ],
  look({ rows }) {
    const sisters = [...grouped(rows, kindOf).values()].filter((same) => same.length >= LEAST_SISTERS);
    if (sisters.length === 0) return { because: "no three circuits of one shape, cable and length" };
    return sisters.flatMap((same) => lookAt(same, sisters.length));
  },
};
