import { isKnownFact } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { type Found, type Look, WEIGHT } from "../look.ts";
import { CABLE_ASSUMED, type Row } from "../rows.ts";
import { leavesOf, number } from "../words.ts";

/** Cable between two points at the least, and longer than any final circuit of a dwelling or of another building, m. */
const LEAST_BETWEEN_POINTS = 0.4;
const LONGEST = { dwelling: 250, other: 1000 } as const;

/** Times the stated length a reading must come to before it is called impossible rather than an error of the length. */
const MUCH_LONGER = 5;

/** Only where it is known to be one are the shorter lengths of a dwelling taken. */
function isDwelling({ use }: Installation): boolean {
  return isKnownFact(use) && use.word === "dwelling";
}

function lookAt(row: Row, dwelling: boolean): readonly Found[] {
  const { r1r2, r1, r2, cable, circuit, zs, before } = row;
  if (cable === undefined) return [];
  const ends = row.ring
    ? r1 === undefined || r2 === undefined
      ? undefined
      : { value: r1.value + r2.value, doubt: r1.doubt + r2.doubt }
    : r1r2;
  if (ends === undefined) return [];
  const most = (ends.value + 3 * ends.doubt) / (cable.perMetre * 0.92);
  const least = Math.max(0, ends.value - 3 * ends.doubt) / (cable.perMetre * 1.05);
  const points = circuit.points ?? 1;
  const needed = LEAST_BETWEEN_POINTS * Math.max(0, points - 1);
  // What Zs shows as well is really there, a loose joint for one: no length has to explain it.
  const confirmed =
    r1r2 !== undefined && zs !== undefined && before !== undefined && zs.value - before.value > r1r2.value / 2;
  const longest = dwelling ? LONGEST.dwelling : LONGEST.other;
  const short = most < needed;
  const long = !confirmed && least > longest && least > MUCH_LONGER * cable.length[1];
  if (!short && !long) return [];
  return [
    {
      words: short
        ? `${row.name}: the resistance is that of at most ${most.toFixed(1)} m of its cable, too short to reach ${points} points.`
        : `${row.name}: the resistance is that of at least ${least.toFixed(0)} m of its cable, longer than the building allows.`,
      numbers: [
        number("length from resistance", `${least.toFixed(1)} m to ${most.toFixed(1)} m`),
        number("points", String(points)),
        number("stated length", `${cable.length[0]} m to ${cable.length[1]} m`),
      ],
      readings: leavesOf(row.ring ? [r1, r2] : [r1r2]),
      chance: null,
      weight: WEIGHT.odd,
    },
  ];
}

/** A resistance that no cable of this size could have in this building. */
export const impossibleLength: Look = {
  id: "impossible-length",
  title: "The resistance gives an impossible length",
  test: "Works the length back from the resistance and the sizes, with the doubt of the instrument, and asks whether it can reach the points (0.4 m between two at the least) and fit into the building.",
  assumed: [CABLE_ASSUMED],
  innocent: [
    "the reading was taken at a near point, not the furthest",
    "a loose joint adds resistance; then Zs is raised as well",
    "the size of a conductor is not what was written",
    "leads were not nulled, or nulled with a joint in them",
  ],
  look(job) {
    const rows = job.rows.filter(({ cable }) => cable !== undefined);
    if (rows.length === 0) return { because: "no cable has sizes, material and length" };
    const dwelling = isDwelling(job.installation);
    return rows.flatMap((row) => lookAt(row, dwelling));
  },
};
