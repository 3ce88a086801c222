import { isKnownFact, type Misfit, printQuantity } from "@good-grounds/core";
import type { Board, Supply } from "@good-grounds/inspection";
import { type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { logSum } from "./gaussian.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";
import { about, FAULTY, fallbacks, LOG_SOUND, READ_ZE, shownReading } from "./origin-shown.ts";

const ohms = (value: number) => printQuantity(value, "ohm");

/** A distributor's earth that is sound hardly has more by itself, Ω: what is above it is no supply without its bonding. */
const MOST_IN_TN = 1;

/** Bonded metal with the neutral of the street hardly has less, Ω. */
const LEAST_BONDED = 0.02;

/** Ze and Zdb of a board at the origin, and the deviation of the difference between them, Ω. */
interface LoopsRead {
  readonly ze: Reading;
  readonly zdb: Reading;
  readonly deviation: number;
  readonly tt: boolean;
}

/** Logarithm of the density of two loops of which neither is out. */
function soundLog({ ze, zdb, deviation, tt }: LoopsRead): number {
  const off = zdb.value - ze.value;
  // On an electrode a board that is far lower has found another earth, which is worth knowing.
  const bonded = tt ? 0.03 : 0.3;
  const ways = off < 0 ? Math.log(bonded) + logSpread(-off, 0.005, Math.max(0.01, ze.value)) : Number.NEGATIVE_INFINITY;
  return LOG_SOUND + logSum([Math.log(1 - bonded) + logNormal(off, 0, deviation), ways]);
}

function suspectOf(
  { ze, zdb, deviation }: LoopsRead,
  is: Pick<Suspect, "id" | "innocent" | "words" | "expects">,
  prior: number,
  density: number,
): Suspect {
  const value = zdb.value - ze.value > 0 ? ze.value : zdb.value;
  return {
    ...is,
    log: Math.log(FAULTY * prior) + density,
    would: [{ path: zdb.evidence.detail.path, ...about(value, deviation) }],
  };
}

function readingWrong(read: LoopsRead): Suspect {
  const is = {
    id: "loop-reading-wrong",
    innocent: true,
    words: "Ze or Zdb was misread, mistyped or taken elsewhere",
    expects: { zdb: "another value than written", ze: "another value than written" },
  };
  return suspectOf(read, is, 0.3, logSpread(Math.max(0.01, read.zdb.value), 0.005, 1e4));
}

/** What makes Zdb higher than Ze. */
function higher(read: LoopsRead): readonly Suspect[] {
  const { ze, zdb, tt } = read;
  const apart = Math.abs(zdb.value - ze.value);
  const conductorOff = {
    id: "earthing-conductor-off",
    innocent: false,
    words: `the earthing conductor was off when the board was read: about ${ohms(apart)} by what was left of the earth`,
    expects: { zdb: `about ${ohms(ze.value)}`, ze: `about ${ohms(ze.value)}` },
  };
  const joint = {
    id: "joint-in-earthing-conductor",
    innocent: false,
    words: `about ${ohms(apart)} in the earthing conductor, its terminations or the main terminals`,
    expects: { zdb: `still about ${ohms(zdb.value)}`, ze: `about ${ohms(ze.value)}` },
  };
  const atSwitch = {
    id: "joint-at-main-switch",
    innocent: false,
    words: `about ${ohms(apart)} in the tails or at the main switch, so that the fault current at the board is lower as well`,
    expects: { zdb: `still about ${ohms(zdb.value)}, from line to neutral as well`, ze: `about ${ohms(ze.value)}` },
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
    suspectOf(read, conductorOff, tt ? 0.05 : 0.25, logSpread(apart, 1, 500)),
    suspectOf(read, joint, 0.35, logSpread(apart, 0.03, 20)),
    suspectOf(read, atSwitch, tt ? 0.05 : 0.3, logSpread(apart, 0.03, 20)),
    suspectOf(read, bonding, tt ? 0.3 : 0.03, bondingDensity),
    readingWrong(read),
  ];
}

/** What makes Zdb lower than Ze. */
function lower(read: LoopsRead): readonly Suspect[] {
  const { ze, zdb } = read;
  const otherEarth = {
    id: "other-earth",
    innocent: false,
    words: `another earth of about ${ohms(zdb.value)} is connected at the board: bonded metal in the ground or the earth of another supply`,
    expects: { zdb: `still about ${ohms(zdb.value)}`, ze: `about ${ohms(ze.value)}` },
  };
  const density = logSpread(Math.max(0.01, zdb.value), 0.01, Math.max(0.02, ze.value));
  return [suspectOf(read, otherEarth, 0.4, density), readingWrong(read)];
}

/** Zdb of a board at the origin against Ze: higher only by what lies between, lower by whatever earthed metal is bonded. */
export function loopAtBoard(supply: Supply, board: Board): Misfit | undefined {
  const [ze, zdb] = [readingOf(supply.ze), readingOf(board.zdb)];
  if (ze === undefined || zdb === undefined) return undefined;
  const deviation = Math.hypot(wholeDeviation(ze), wholeDeviation(zdb), 0.02);
  const read: LoopsRead = {
    ze,
    zdb,
    deviation,
    tt: isKnownFact(supply.earthing) && supply.earthing.word === "TT",
  };
  return lineUp({
    kind: "supply-loop",
    path: board.path,
    title: `${board.name}: Zdb and Ze do not agree`,
    formula: "Zdb ≤ Ze + tails",
    innocentCauses: ["Ze and Zdb read on different days", "bonding connected for one and not for the other"],
    soundLog: soundLog(read),
    suspects: zdb.value - ze.value > 0 ? higher(read) : lower(read),
    nexts: {
      zdb: "see that the earthing conductor is on and tight, then read Zdb again",
      ze: READ_ZE,
    },
    readings: [
      shownReading("Zdb", zdb, about(ze.value, deviation)),
      shownReading("Ze", ze, about(zdb.value, deviation)),
    ],
    grounds: [ze.evidence, zdb.evidence, ...fallbacks(ze, zdb)],
  });
}
