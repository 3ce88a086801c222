import { sameShown } from "../equal.ts";
import type { Found, Look } from "../look.ts";
import type { Figure, Row } from "../rows.ts";
import { sameDigits } from "../statistics/chances.ts";
import { number } from "../words.ts";

/** Readings a run of even steps has at the least. */
const LEAST_RUN = 5;
/** A step differs from the step before it by at least this many digits, one standard deviation: the noise of three readings. */
const LEAST_SPREAD = 2;

interface Run {
  readonly from: number;
  readonly count: number;
}

/** The longest run of readings with one step between them that is not nought. */
function longestRun(figures: readonly Figure[]): Run {
  let best: Run = { from: 0, count: 0 };
  let from = 0;
  for (let i = 1; i < figures.length; i++) {
    const [a, b, c] = [figures[i - 1] as Figure, figures[i] as Figure, figures[i + 1]];
    const step = b.value - a.value;
    if (sameShown(step, 0, b.resolution)) {
      from = i;
      continue;
    }
    if (i - from + 1 > best.count) best = { from, count: i - from + 1 };
    if (c !== undefined && !sameShown(c.value - b.value, step, b.resolution)) from = i;
  }
  return best;
}

function lookAt(figures: readonly Figure[], what: string, columns: number): readonly Found[] {
  const { from, count } = longestRun(figures);
  if (count < LEAST_RUN) return [];
  const run = figures.slice(from, from + count);
  const [first, second] = run as [Figure, Figure];
  const changes = figures.flatMap((c, i) => {
    const [a, b] = [figures[i - 2], figures[i - 1]];
    return a === undefined || b === undefined ? [] : [Math.abs(c.value - 2 * b.value + a.value)];
  });
  const middle = changes.sort((a, b) => a - b)[Math.floor(changes.length / 2)] ?? 0;
  const spread = Math.max(LEAST_SPREAD * first.resolution, middle);
  const chance = (figures.length - count + 1) * sameDigits(spread, first.resolution) ** (count - 2) * columns;
  return [
    {
      words: `${count} readings of ${what} in a row go by the same step, ${run
        .slice(0, 6)
        .map(({ leaf }) => leaf.detail.text)
        .join(", ")}${count > 6 ? " and so on" : ""}.`,
      numbers: [
        number("step", `${(second.value - first.value).toPrecision(2)} Ω`),
        number("readings in the run", String(count)),
        number("usual change from step to step", `${spread.toPrecision(2)} Ω`),
      ],
      readings: run.map(({ leaf }) => leaf),
      chance: Math.min(1, chance),
    },
  ];
}

/** Readings that go up or down by the same step from circuit to circuit. */
export const evenSteps: Look = {
  id: "even-steps",
  title: "Readings go by even steps",
  test: "Looks for the longest run of circuits whose R1+R2, or Zs, goes up or down by one and the same step, and bounds the chance of it by how much steps change elsewhere in the job.",
  assumed: ["a step differs from the one before by two digits or more, one standard deviation"],
  innocent: ["lamps or rooms in a row at equal distances, on cables that grow by the same length"],
  look({ rows }) {
    const columns = [
      { what: "R1+R2", of: ({ r1r2 }: Row) => r1r2 },
      { what: "Zs", of: ({ zs }: Row) => zs },
    ].map(({ what, of }) => ({ what, figures: rows.flatMap((row) => of(row) ?? []) }));
    if (columns.every(({ figures }) => figures.length < LEAST_RUN))
      return { because: `fewer than ${LEAST_RUN} circuits with R1+R2 or Zs` };
    return columns.flatMap(({ what, figures }) => lookAt(figures, what, columns.length));
  },
};
