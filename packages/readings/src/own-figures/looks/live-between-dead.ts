import type { Evidence, Measured, Unit } from "@good-grounds/core";
import { type Look, WEIGHT } from "../look.ts";
import type { Row } from "../rows.ts";
import { named, number } from "../words.ts";

interface Timed {
  readonly leaf: Measured<Unit>;
  readonly at: number;
}

function timed(leaves: readonly Evidence<Unit>[]): readonly Timed[] {
  return leaves.flatMap((leaf) => {
    if (leaf.kind !== "measured" || leaf.detail.taken.at === undefined) return [];
    return [{ leaf, at: Date.parse(leaf.detail.taken.at) }];
  });
}

/** Dead and live readings of one circuit, its own RCD among the live ones. */
function readingsOf({ circuit }: Row) {
  const {
    r1,
    rn,
    r2,
    crossLineNeutral,
    crossLineCpc,
    r1r2,
    r2Only,
    insulationLiveLive,
    insulationLiveEarth,
    zs,
    faultCurrent,
  } = circuit.readings;
  const points = [...crossLineNeutral, ...crossLineCpc].map(({ reading }) => reading);
  const own = circuit.residual.devices.filter(({ path }) => path.at(-1) === "own");
  return {
    dead: timed([r1, rn, r2, ...points, r1r2, r2Only, insulationLiveLive, insulationLiveEarth]),
    live: timed([zs, faultCurrent, ...own.flatMap(({ timeAtRated, timeAtFive }) => [timeAtRated, timeAtFive])]),
  };
}

/** A live reading of a circuit between its dead ones: it was isolated then. */
export const liveBetweenDead: Look = {
  id: "live-between-dead",
  title: "A live test while the circuit was isolated",
  test: "Looks for a loop, fault current or RCD reading of a circuit whose time lies between the first and the last dead reading of the same circuit on the same day.",
  assumed: ["a circuit stays isolated from its first dead test of a day to its last"],
  innocent: [
    "a dead test was repeated after the live ones",
    "the circuit was energised in between and isolated again",
    "the clock of a phone was wrong",
  ],
  look({ rows }) {
    const circuits = rows
      .map((row) => ({ row, ...readingsOf(row) }))
      .filter(({ dead, live }) => dead.length > 1 && live.length > 0);
    if (circuits.length === 0) return { because: "no circuit has times for both dead and live readings" };
    const found = circuits.flatMap(({ row, dead, live }) => {
      const between = live.filter(({ at, leaf }) => {
        const day = leaf.detail.taken.at?.slice(0, 10);
        const sameDay = dead.filter((one) => one.leaf.detail.taken.at?.slice(0, 10) === day);
        return sameDay.some((one) => one.at < at) && sameDay.some((one) => one.at > at);
      });
      return between.length === 0 ? [] : [{ row, between }];
    });
    if (found.length === 0) return [];
    return [
      {
        words: `Live readings lie between the dead readings of the same circuit: ${named(found.map(({ row }) => row))}.`,
        numbers: [
          number("circuits with times for both", String(circuits.length)),
          number("circuits concerned", String(found.length)),
        ],
        readings: found.flatMap(({ between }) => between.map(({ leaf }) => leaf)),
        chance: null,
        weight: WEIGHT.contradicts,
      },
    ];
  },
};
