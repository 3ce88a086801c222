import { type ExpectedReading, isKnownFact, type Misfit } from "@good-grounds/core";
import type { Board, Supply } from "@good-grounds/inspection";
import { type CurrentsRead, currentsOf, currentsWith } from "./board-currents.ts";
import { ohms } from "./board-shown.ts";
import { type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { logSum } from "./gaussian.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";
import { about, FAULTY, fallbacks, LOG_SOUND, READ_ZE, shownReading } from "./origin-shown.ts";

/** A distributor's earth that is sound hardly has more by itself, Ω: what is above it is no supply without its bonding. */
const MOST_IN_TN = 1;

/** Bonded metal with the neutral of the street hardly has less, Ω. */
const LEAST_BONDED = 0.02;

/** Ze and Zdb of a board at the origin, and the deviation of the difference between them, Ω. */
interface LoopsRead {
  readonly ze: Reading;
  readonly zdb: Reading;
  /** By how much Zdb is the higher one, Ω. */
  readonly off: number;
  readonly deviation: number;
}

/** What was read at the origin and at a board beside it: loops to earth, fault currents, or both. */
interface OriginRead {
  readonly loops: LoopsRead | undefined;
  readonly currents: CurrentsRead | undefined;
  readonly tt: boolean;
}

/** Logarithm of the density of the loops to earth with so many ohms between them. */
function loopsWith({ loops, tt }: OriginRead, more: number, besides = 0): number {
  if (loops === undefined) return 0;
  const off = loops.off - more;
  // On an electrode a board that is far lower has found another earth, which is worth knowing.
  const bonded = tt ? 0.03 : 0.3;
  const ways =
    off < 0 ? Math.log(bonded) + logSpread(-off, 0.005, Math.max(0.01, loops.ze.value)) : Number.NEGATIVE_INFINITY;
  return logSum([Math.log(1 - bonded) + logNormal(off, 0, Math.hypot(loops.deviation, besides)), ways]);
}

type Is = Pick<Suspect, "id" | "innocent" | "words" | "expects">;

function suspectOf(read: OriginRead, is: Is, prior: number, density: number): Suspect {
  return { ...is, log: Math.log(FAULTY * prior) + density, would: wouldBe(read) };
}

/** A misfit of this kind is told by what is between the two places: the one is then as the other has it. */
function wouldBe({ loops, currents }: OriginRead): readonly ExpectedReading[] {
  return [
    ...(loops === undefined
      ? []
      : [
          {
            path: loops.zdb.evidence.detail.path,
            ...about(Math.min(loops.ze.value, loops.zdb.value), loops.deviation),
          },
        ]),
    ...(currents === undefined
      ? []
      : [
          { path: currents.board.evidence.detail.path, ...about(currents.expected.value, currents.expected.deviation) },
        ]),
  ];
}

function readingWrong(read: OriginRead, { zdb }: LoopsRead): Suspect {
  const is = {
    id: "loop-reading-wrong",
    innocent: true,
    words: "Ze or Zdb was misread, mistyped or taken elsewhere",
    expects: { zdb: "another value than written", ze: "another value than written" },
  };
  const density = logSpread(Math.max(0.01, zdb.value), 0.005, 1e4) + currentsWith(read.currents, 0);
  return suspectOf(read, is, 0.3, density);
}

/** What makes Zdb higher than Ze, the line side as it was. */
function higher(read: OriginRead, loops: LoopsRead): readonly Suspect[] {
  const { tt, currents } = read;
  const { ze, zdb, off } = loops;
  const line = currentsWith(currents, 0);
  const conductorOff = {
    id: "earthing-conductor-off",
    innocent: false,
    words: `the earthing conductor was off when the board was read: about ${ohms(off)} by what was left of the earth`,
    expects: { zdb: `about ${ohms(ze.value)}`, ze: `about ${ohms(ze.value)}` },
  };
  const joint = {
    id: "joint-in-earthing-conductor",
    innocent: false,
    words: `about ${ohms(off)} in the earthing conductor, its terminations or the main terminals`,
    expects: { zdb: `still about ${ohms(zdb.value)}`, ze: `about ${ohms(ze.value)}`, current: "as at the origin" },
  };
  const bonding = {
    id: "bonding-on-at-ze",
    innocent: true,
    words: "bonding or another earth was connected while Ze was read and took no part at the board",
    expects: { zdb: `still about ${ohms(zdb.value)}`, ze: `about ${ohms(zdb.value)}` },
  };
  const bondingDensity =
    tt || zdb.value <= MOST_IN_TN
      ? logSpread(ze.value, LEAST_BONDED, Math.max(0.05, zdb.value))
      : Number.NEGATIVE_INFINITY;
  return [
    suspectOf(read, conductorOff, tt ? 0.05 : 0.25, logSpread(off, 1, 500) + line),
    suspectOf(read, joint, 0.35, logSpread(off, ...JOINT) + line),
    suspectOf(read, bonding, tt ? 0.3 : 0.03, bondingDensity + line),
  ];
}

/** What makes Zdb lower than Ze. */
function lower(read: OriginRead, { ze, zdb }: LoopsRead): readonly Suspect[] {
  const otherEarth = {
    id: "other-earth",
    innocent: false,
    words: `another earth of about ${ohms(zdb.value)} is connected at the board: bonded metal in the ground or the earth of another supply`,
    expects: { zdb: `still about ${ohms(zdb.value)}`, ze: `about ${ohms(ze.value)}` },
  };
  const density = logSpread(Math.max(0.01, zdb.value), 0.01, Math.max(0.02, ze.value));
  return [suspectOf(read, otherEarth, 0.4, density + currentsWith(read.currents, 0))];
}

/** A joint may have so much, Ω. */
const JOINT = [0.03, 20] as const;

/** A joint on the line side is in the loops to earth and in the fault current of the board alike. */
function atSwitch(read: OriginRead): readonly Suspect[] {
  const { loops, currents, tt } = read;
  if (currents === undefined && !(loops !== undefined && loops.off > 0)) return [];
  const off = currents?.off ?? loops?.off ?? 0;
  const is = {
    id: "joint-at-main-switch",
    innocent: false,
    words: `about ${ohms(Math.max(0, off))} in the tails or at the main switch, so that the fault current at the board is lower as well`,
    expects: {
      current: "lower than at the origin",
      ...(loops === undefined ? {} : { zdb: `still about ${ohms(loops.zdb.value)}, from line to neutral as well` }),
    },
  };
  const density = logSpread(off, ...JOINT) + (currents === undefined ? 0 : loopsWith(read, off, currents.deviation));
  return [suspectOf(read, is, tt && currents === undefined ? 0.05 : 0.3, density)];
}

function currentWrong(read: OriginRead, currents: CurrentsRead): Suspect {
  const is = {
    id: "fault-current-wrong",
    innocent: true,
    words:
      "the fault current at the board was misread or mistyped, or read between other conductors than that at the origin",
    expects: { current: "as at the origin" },
  };
  const density = loopsWith(read, 0) + logSpread(currents.loop, 0.005, 1e3);
  return suspectOf(read, is, 0.15, density);
}

function loopsOf(supply: Supply, board: Board): LoopsRead | undefined {
  const [ze, zdb] = [readingOf(supply.ze), readingOf(board.zdb)];
  if (ze === undefined || zdb === undefined) return undefined;
  return {
    ze,
    zdb,
    off: zdb.value - ze.value,
    deviation: Math.hypot(wholeDeviation(ze), wholeDeviation(zdb), 0.02),
  };
}

/**
 * A board at the origin against the origin: its loop to earth is higher only by what lies between, lower by whatever
 * earthed metal is bonded, and its fault current is lower only by what lies in line and neutral.
 */
export function loopAtBoard(supply: Supply, board: Board): Misfit | undefined {
  const [loops, currents] = [loopsOf(supply, board), currentsOf(supply, board)];
  if (loops === undefined && currents === undefined) return undefined;
  const read: OriginRead = { loops, currents, tt: isKnownFact(supply.earthing) && supply.earthing.word === "TT" };
  const isOfLoops = loops !== undefined && Math.abs(loops.off) > 2 * loops.deviation;
  return lineUp({
    kind: "supply-loop",
    path: board.path,
    title: `${board.name}: ${isOfLoops || currents === undefined ? "Zdb and Ze do not agree" : "the fault current is lower than at the origin"}`,
    formula:
      isOfLoops || currents === undefined ? "Zdb ≤ Ze + tails" : "U ÷ Ipf at the board ≤ U ÷ Ipf at the origin + tails",
    innocentCauses: ["the two places read on different days", "bonding connected for one and not for the other"],
    soundLog: LOG_SOUND + loopsWith(read, 0) + currentsWith(currents, 0),
    suspects: [
      ...(loops === undefined ? [] : [...(loops.off > 0 ? higher : lower)(read, loops), readingWrong(read, loops)]),
      ...atSwitch(read),
      ...(currents === undefined ? [] : [currentWrong(read, currents)]),
    ],
    nexts: {
      ...(loops === undefined ? {} : { zdb: "see that the earthing conductor is on and tight, then read Zdb again" }),
      current: "read the fault current, line to neutral, on both sides of the main switch one after the other",
      ...(loops === undefined ? {} : { ze: READ_ZE }),
    },
    readings: shownOf(read),
    grounds: groundsOf(read),
  });
}

function shownOf({ loops, currents }: OriginRead) {
  return [
    ...(loops === undefined
      ? []
      : [
          shownReading("Zdb", loops.zdb, about(loops.ze.value, loops.deviation)),
          shownReading("Ze", loops.ze, about(loops.zdb.value, loops.deviation)),
        ]),
    ...(currents === undefined
      ? []
      : [shownReading("Ipf", currents.board, about(currents.expected.value, currents.expected.deviation))]),
  ];
}

function groundsOf({ loops, currents }: OriginRead) {
  const read = [
    ...(loops === undefined ? [] : [loops.ze, loops.zdb]),
    ...(currents === undefined ? [] : [currents.origin, currents.board]),
  ];
  return [...read.map(({ evidence }) => evidence), ...fallbacks(...read)];
}
