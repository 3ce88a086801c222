import { grouped } from "../grouped.ts";
import type { Found, Look } from "../look.ts";
import type { Figure } from "../rows.ts";
import { chiSquaredAbove } from "../statistics/chances.ts";
import { number } from "../words.ts";

/** Readings of equal resolution it takes before last digits say anything. */
const LEAST_READINGS = 50;
/** The tenth part of them must lie this many digits apart or more, or the digits are not free. */
const LEAST_RANGE = 30;
const DIGITS = 10;

function lastDigit({ value, resolution }: Figure): number {
  return Math.round(value / resolution) % DIGITS;
}

function lookAt(figures: readonly Figure[], kinds: number): readonly Found[] {
  const counts = Array.from({ length: DIGITS }, () => 0);
  for (const figure of figures) counts[lastDigit(figure)] = (counts[lastDigit(figure)] ?? 0) + 1;
  const expected = figures.length / DIGITS;
  const squared = counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  const most = Math.max(...counts);
  const [first] = figures;
  return [
    {
      words: `Of ${figures.length} readings, ${most} end in ${counts.indexOf(most)}; about ${expected.toFixed(0)} would.`,
      numbers: [
        number("readings of equal resolution", String(figures.length)),
        number("last digits 0 to 9", counts.join(" ")),
        number("chi-squared, 9 degrees of freedom", squared.toFixed(1)),
      ],
      readings: first === undefined ? [] : figures.map(({ leaf }) => leaf),
      chance: Math.min(1, kinds * chiSquaredAbove(squared, DIGITS - 1)),
    },
  ];
}

/** Whether readings spread over enough digits for the last to be free. */
function isSpread(figures: readonly Figure[]): boolean {
  const digits = figures.map(({ value, resolution }) => value / resolution).sort((a, b) => a - b);
  const at = (part: number) => digits[Math.floor(part * (digits.length - 1))] ?? 0;
  return at(0.9) - at(0.1) >= LEAST_RANGE;
}

/** Last digits that are not evenly spread: written from the head, people favour some. */
export const lastDigits: Look = {
  id: "last-digits",
  title: "Last digits are not evenly spread",
  test: "Counts the last digits of R1+R2, r1, r2 and Zs (together), of finite insulation resistances and of RCD times, each with 50 readings or more of equal resolution, and holds the counts against even ones by chi-squared.",
  assumed: ["readings that spread over many digits end in each of them equally often"],
  innocent: [
    "an instrument that shows steps of 2 or 5 in its last digit",
    "readings rounded on the sheet",
    "many circuits that are alike",
  ],
  look({ rows }) {
    // rn follows r1 and the points of a ring follow its ends: they would count the same digits twice.
    const kinds = [
      rows.flatMap(({ r1, r2, r1r2, zs }) => [r1, r2, r1r2, zs]),
      rows.flatMap(({ insulation }) => insulation),
      rows.map(({ rcdTime }) => rcdTime),
    ].flatMap((figures) => {
      const known = figures.filter((figure) => figure !== undefined);
      return [...grouped(known, ({ resolution }) => resolution).values()].filter(
        (same) => same.length >= LEAST_READINGS && isSpread(same),
      );
    });
    if (kinds.length === 0)
      return { because: `fewer than ${LEAST_READINGS} readings of one kind and equal resolution` };
    return kinds.flatMap((figures) => lookAt(figures, kinds.length));
  },
};
