import { sameShown } from "../equal.ts";
import { grouped, largestOf } from "../grouped.ts";
import type { Found, Look } from "../look.ts";
import { REPEATABILITY_ASSUMED } from "../repeatability.ts";
import type { Figure, Row } from "../rows.ts";
import { atLeastOf, sameDigits, someAlike } from "../statistics/chances.ts";
import { leavesOf, number } from "../words.ts";

/** Between two inspections insulation changes by more than between two readings: part of it, one standard deviation. */
const INSULATION_CHANGES = 0.3;
/** RCD times differ from year to year by this, s. */
const RCD_CHANGES = 0.001;

interface Pair {
  readonly what: string;
  readonly now: Figure;
  readonly then: Figure;
  /** The greatest chance that the later one shows the same digits. */
  readonly chance: number;
  readonly equal: boolean;
}

const normal = (words: string) =>
  words
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();

/** Circuits of the earlier file by what they can be found by; null where several have it. */
type Index = ReadonlyMap<string, Row | null>;

const wordsKey = ({ circuit }: Row) => `words ${normal(circuit.description)}`;
const numberKey = ({ circuit }: Row) =>
  `number ${circuit.board.id} ${circuit.designation} ${normal(circuit.description)}`;
const idKey = ({ circuit }: Row) => `id ${circuit.board.id} ${circuit.id}`;

function indexOf(rows: readonly Row[]): Index {
  const index = new Map<string, Row | null>();
  for (const row of rows) {
    for (const key of [numberKey(row), wordsKey(row), idKey(row)]) index.set(key, index.has(key) ? null : row);
  }
  return index;
}

/** The circuit of the earlier file that a circuit is: by board, number and words; else by words, or by id, that stand once. */
function match(row: Row, earlier: Index): Row | undefined {
  return earlier.get(numberKey(row)) ?? earlier.get(wordsKey(row)) ?? earlier.get(idKey(row)) ?? undefined;
}

function pair(what: string, now: Figure | undefined, then: Figure | undefined, changes = 0): readonly Pair[] {
  if (now === undefined || then === undefined || !sameShown(now.resolution, then.resolution, now.resolution)) return [];
  const deviation = Math.hypot(now.repeat, then.repeat, changes);
  return [
    {
      what,
      now,
      then,
      chance: sameDigits(deviation, now.resolution),
      equal: sameShown(now.value, then.value, now.resolution),
    },
  ];
}

function pairsOf(now: Row, then: Row): readonly Pair[] {
  return [
    ...pair("r1", now.r1, then.r1),
    ...pair("rn", now.rn, then.rn),
    ...pair("r2", now.r2, then.r2),
    ...now.crossLineNeutral.flatMap((one, i) => pair("ring points", one, then.crossLineNeutral[i])),
    ...now.crossLineCpc.flatMap((one, i) => pair("ring points", one, then.crossLineCpc[i])),
    ...pair("R1+R2", now.r1r2, then.r1r2),
    ...pair("Zs", now.zs, then.zs),
    ...now.insulation.flatMap((one) => {
      const same = then.insulation.find(({ leaf }) => leaf.term.id === one.leaf.term.id);
      return pair("insulation", one, same, INSULATION_CHANGES * one.value);
    }),
    ...pair("RCD times", now.rcdTime, then.rcdTime, RCD_CHANGES),
  ];
}

/** Exact repeats, counted over everything that was read then and now. */
function repeats(pairs: readonly Pair[]): Found {
  const equal = pairs.filter((one) => one.equal);
  return {
    words: `${equal.length} of ${pairs.length} readings are those of the earlier file to the last digit.`,
    numbers: [
      number("readings in both files", String(pairs.length)),
      number("equal to the last digit", String(equal.length)),
      number("expected at most from repeatability", pairs.reduce((sum, { chance }) => sum + chance, 0).toFixed(1)),
    ],
    readings: leavesOf(equal.map(({ now }) => now)),
    chance: atLeastOf(
      pairs.map(({ chance }) => chance),
      equal.length,
    ),
  };
}

/** R1+R2 or Zs that all differ from the earlier ones by one amount: the same list, moved. */
function shifted(pairs: readonly Pair[], what: string): readonly Found[] {
  const own = pairs.filter((one) => one.what === what);
  const digits = ({ now, then }: Pair) => Math.round((now.value - then.value) / now.resolution);
  const moved = own.filter((one) => digits(one) !== 0);
  const largest = largestOf(grouped(moved, digits));
  if (largest.length < 3) return [];
  const [first] = largest as readonly [Pair];
  return [
    {
      words: `${what} differs from the earlier file by the same amount on ${largest.length} of ${own.length} circuits.`,
      numbers: [
        number("circuits with both readings", String(own.length)),
        number("the amount", `${(first.now.value - first.then.value).toPrecision(2)} Ω`),
      ],
      readings: leavesOf(largest.map(({ now }) => now)),
      // Two kinds of reading are looked at, and exact repeats besides.
      chance: Math.min(
        1,
        3 *
          someAlike(
            largest.length,
            own.length,
            own.reduce((most, { chance }) => Math.max(most, chance), 0),
          ),
      ),
    },
  ];
}

/** A schedule that is an earlier one, to the digit or moved by a constant. */
export const copiedSchedule: Look = {
  id: "copied-schedule",
  title: "The readings are those of an earlier file",
  test: "Matches circuits by board, number and words, counts readings that are alike to the last digit, and compares the count with what repeatability allows; also whether R1+R2, or Zs, differ by one constant.",
  assumed: [
    REPEATABILITY_ASSUMED,
    "between two inspections insulation changes by 30 % and RCD times by 1 ms, one standard deviation; common practice",
  ],
  innocent: [
    "the earlier file is another version of this one",
    "readings were agreed to be taken over: say so under the limitations",
    "few readings, coarse resolution",
  ],
  look({ rows, earlier }) {
    if (earlier === undefined) return { because: "no earlier file was given" };
    const index = indexOf(earlier.rows);
    const pairs = rows.flatMap((row) => {
      const then = match(row, index);
      return then === undefined ? [] : pairsOf(row, then);
    });
    if (pairs.length === 0) return { because: "no circuit of the earlier file with readings was found again" };
    const all = repeats(pairs);
    return [
      { ...all, chance: Math.min(1, 3 * (all.chance ?? 1)) },
      ...shifted(pairs, "R1+R2"),
      ...shifted(pairs, "Zs"),
    ];
  },
};
