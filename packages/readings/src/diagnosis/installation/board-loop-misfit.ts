import { isAtOrigin } from "@good-grounds/computations";
import { type Evidence, isKnownFact, type Misfit, type MisfitReading, type Unit } from "@good-grounds/core";
import type { Installation, Supply } from "@good-grounds/inspection";
import { type CurrentsRead, currentsOf, currentsWith } from "./board-currents.ts";
import type { BoardFit, BoardReadings } from "./board-fit.ts";
import { MOST_READINGS, ohms } from "./board-shown.ts";
import { FALLBACK, type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { lineUp, logSpread, type Suspect } from "./line-up.ts";
import { SharedErrors } from "./shared-errors.ts";

/** The loop at a board as it was read, and as the circuits behind it show it. */
interface LoopRead {
  readonly readings: BoardReadings;
  readonly supply: Supply;
  /** Zdb, or Ze where it stands for it. */
  readonly reading: Reading;
  readonly isZe: boolean;
  readonly name: "Ze" | "Zdb";
  /** The loop the circuits show, Ω, and how far that is from the reading. */
  readonly seen: number;
  readonly apart: number;
  /** Fault currents before and behind what may lie between Ze and the circuits; undefined where Zdb was read behind it. */
  readonly currents: CurrentsRead | undefined;
}

/** A suspect of a loop; `value` is the loop to be expected under it, Ω, `inLine` how much of what is between is not earth. */
function suspectOf(
  { reading, currents }: LoopRead,
  is: Pick<Suspect, "id" | "innocent" | "words" | "expects">,
  prior: number,
  density: number,
  value: number,
  inLine = 0,
): Suspect {
  const { path } = reading.evidence.detail;
  return {
    ...is,
    would: [{ path, value, low: 0.9 * value, high: 1.1 * value }],
    log: Math.log(0.03 * prior) + density + currentsWith(currents, inLine, 0.1 * inLine),
  };
}

function readingWrong(read: LoopRead): Suspect {
  const { readings, supply, reading, isZe, name, seen } = read;
  const ze = readingOf(supply.ze);
  // Two readings that agree were not both misread.
  const borneOut =
    !isZe &&
    isAtOrigin(readings.board) &&
    ze !== undefined &&
    Math.abs(ze.value - reading.value) < 3 * Math.hypot(wholeDeviation(ze), wholeDeviation(reading), 0.02);
  const is = {
    id: "loop-reading-wrong",
    innocent: true,
    words: `${name} was misread, mistyped or taken elsewhere`,
    expects: { zdb: `about ${ohms(seen)}`, zs: "as before" },
  };
  return suspectOf(read, is, borneOut ? 3e-4 : 0.12, logSpread(Math.max(reading.value, 0.01), 0.005, 1e4), seen);
}

/** What makes the loop behind a board higher than it was read. */
function higher(read: LoopRead): readonly Suspect[] {
  const { readings, supply, reading, name, seen, apart, currents } = read;
  const tn = !isKnownFact(supply.earthing) || supply.earthing.word !== "TT";
  const conductorOff = {
    id: "earthing-conductor-off",
    innocent: false,
    words: `the earthing conductor was off while the circuits were tested: about ${ohms(apart)} more on every Zs`,
    expects: {
      zdb: `about ${ohms(reading.value)} with the conductor back on`,
      zs: `about ${ohms(apart)} less than before`,
    },
  };
  const joint = {
    id: "joint-before-circuits",
    innocent: false,
    words: `about ${ohms(apart)} between where ${name} was read and the circuits: earthing conductor, earth terminal or line terminals of the board`,
    expects: {
      zdb: `between ${ohms(reading.value)} and ${ohms(seen)}, higher behind the joint`,
      zs: "as before",
    },
  };
  const atSwitch = {
    id: "joint-at-main-switch",
    innocent: false,
    words: `about ${ohms(apart)} in the tails or at the main switch, so that the fault current at the board is lower as well`,
    expects: { zdb: `about ${ohms(seen)}, from line to neutral as well`, zs: "as before" },
  };
  const offPrior = tn && isAtOrigin(readings.board) ? 0.45 : 0.02;
  return [
    suspectOf(read, conductorOff, offPrior, logSpread(apart, 1, 500), reading.value),
    suspectOf(read, joint, 0.3, logSpread(apart, 0.03, 5), reading.value),
    ...(currents === undefined
      ? []
      : [suspectOf(read, atSwitch, 0.3, logSpread(apart, 0.03, 5), reading.value, apart)]),
    readingWrong(read),
  ];
}

/** What makes the loop behind a board lower than it was read. */
function lower(read: LoopRead): readonly Suspect[] {
  const { readings, reading, isZe, seen, apart } = read;
  const { lineNeutral } = readings;
  const bonding = {
    id: "bonding-in-parallel",
    innocent: true,
    words: "bonding and other earthed metal took part in the circuits' loop tests and not in that at the origin",
    expects: { zdb: `about ${ohms(seen)} with everything connected`, zs: "as before" },
  };
  const toNeutral = {
    id: "circuits-line-to-neutral",
    innocent: true,
    words: "every Zs was read between line and neutral",
    expects: { zdb: `about ${ohms(reading.value)}`, zs: "higher, line to earth" },
  };
  const bondingDensity = logSpread(apart, 0.02, Math.max(reading.value, 0.03));
  const neutralDensity = (loop: number) => (Math.abs(Math.log(seen / loop)) < 0.3 ? 2 : Number.NEGATIVE_INFINITY);
  return [
    suspectOf(read, bonding, isZe ? 0.6 : 0.25, bondingDensity, reading.value),
    readingWrong(read),
    ...(lineNeutral === undefined
      ? []
      : [suspectOf(read, toNeutral, 0.05, neutralDensity(lineNeutral), reading.value)]),
  ];
}

/** The loop at the board against what all its circuits say of it. */
export function loopMisfit(readings: BoardReadings, fit: BoardFit, { supply }: Installation): Misfit | undefined {
  const { board, loop, shared, circuits } = readings;
  const { loop: loopFit } = fit;
  const reading = loop?.readings[0];
  if (loop === undefined || reading === undefined || loopFit === undefined) return undefined;
  const { mean } = loopFit.moments;
  const seen = Math.max(0, shared.before + (mean[SharedErrors.BEFORE] as number) * shared.beforeDeviation);
  const name = loop.isZe ? "Ze" : "Zdb";
  const apart = Math.abs(seen - reading.value);
  const currents = loop.isZe ? currentsOf(supply, board) : undefined;
  const read: LoopRead = { readings, supply, reading, isZe: loop.isZe, name, seen, apart, currents };
  const own = loopFit.sound.expected.map(
    (one): MisfitReading => ({
      ...one,
      name,
      unit: "ohm",
      shown: reading.evidence.detail.text,
      measured: reading.value,
    }),
  );
  return lineUp({
    kind: "board-loop",
    path: board.path,
    title: `${board.name}: every Zs is ${seen > reading.value ? "higher" : "lower"} than ${name} and R1+R2 give`,
    formula: `Zs − (R1+R2) = ${name} on every circuit`,
    innocentCauses: ["the board was read before the bonding was put back, or after", "Ze was written down for Zdb"],
    soundLog: Math.log(0.97) + loopFit.sound.logDensity + currentsWith(currents, 0),
    suspects: seen > reading.value ? higher(read) : lower(read),
    nexts: {
      zs: "see that the earthing conductor is on, then read Zs of one circuit again",
      zdb: "read Zdb again with earthing and bonding connected",
    },
    readings: own,
    grounds: [
      reading.evidence,
      ...circuits
        .slice(0, MOST_READINGS)
        .flatMap((block) => block.readings.map(({ evidence }): Evidence<Unit> => evidence)),
      ...(reading.stated ? [] : [FALLBACK]),
    ],
  });
}
