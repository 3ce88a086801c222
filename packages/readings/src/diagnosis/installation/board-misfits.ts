import { isAtOrigin } from "@good-grounds/computations";
import {
  type Evidence,
  isKnownFact,
  type Misfit,
  type MisfitReading,
  printQuantity,
  type Unit,
} from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { type BoardFit, type BoardReadings, type BoardState, fitBoard } from "./board-fit.ts";
import { circuitMisfit, readingsOf } from "./circuit-misfit.ts";
import { isLive, LENGTHS_DEVIATION, SharedErrors } from "./circuit-model.ts";
import { lineUp, logSpread, type Suspect } from "./line-up.ts";
import { FALLBACK, NULL_DEVIATION, readingOf, wholeDeviation } from "./noise.ts";
import { LISTED, LOG_TEN } from "./thresholds.ts";

/** How often the leads were not nulled, or all lengths of a board are out, before any reading is looked at. */
const LOG_STATE = Math.log(0.02);

/** So many circuits with dead tests of one meter are needed before something common to them is looked for. */
const ENOUGH = 3;

/** Larger boards are no longer one job with one pair of leads. */
const LARGEST_BOARD = 120;

/** Readings shown with a misfit of a whole board. */
const MOST_READINGS = 12;

const ohms = (value: number) => printQuantity(Math.round(value * 100) / 100, "ohm");

/** The misfits of one board: what is common to its circuits, the loop before them, then circuit by circuit. */
export function boardMisfits(readings: BoardReadings, installation: Installation): readonly Misfit[] {
  const plain = fitBoard(readings, { kind: "plain" });
  if (plain === undefined) return [];
  const states = statesOf(readings);
  const worthwhile = plain.circuits.some(({ sound }) => sound.distance > 4) || plain.loop !== undefined;
  const others =
    worthwhile && readings.circuits.length <= LARGEST_BOARD
      ? states.flatMap((state) => fitBoard(readings, state) ?? []).filter(isPossible)
      : [];
  const best = [...others].sort((a, b) => b.logEvidence - a.logEvidence)[0];
  const common =
    best !== undefined && LOG_STATE + best.logEvidence - plain.logEvidence >= LISTED * LOG_TEN
      ? commonMisfit(readings, plain, others)
      : undefined;
  const fit = common === undefined || best === undefined ? plain : best;
  return [
    ...(common === undefined ? [] : [common]),
    ...[loopMisfit(readings, fit, installation)].flatMap((one) => one ?? []),
    ...fit.circuits.flatMap((one) => circuitMisfit(one) ?? []),
  ];
}

/** Lengths of a whole board are guessed short or long, but not so. */
const MOST_LENGTHS_OUT = 0.6;

function isPossible({ state, moments }: BoardFit): boolean {
  const part = (moments.mean[SharedErrors.LENGTHS] as number) * LENGTHS_DEVIATION;
  return state.kind !== "lengths" || Math.abs(part) <= MOST_LENGTHS_OUT;
}

function statesOf({ circuits, shared }: BoardReadings): readonly BoardState[] {
  const dead = (meter: string) =>
    circuits.filter(({ slots, readings }) => slots.some((slot, i) => !isLive(slot) && readings[i]?.meter === meter))
      .length >= ENOUGH;
  const known = circuits.filter(({ cableKnown }) => cableKnown).length >= ENOUGH;
  return [
    ...shared.meters.filter(dead).map((meter): BoardState => ({ kind: "leads-not-nulled", meter })),
    ...(known ? [{ kind: "lengths" } as const] : []),
  ];
}

/** Something common to the readings of a board: what fits all of it better than a fault in each circuit. */
function commonMisfit(readings: BoardReadings, plain: BoardFit, fits: readonly BoardFit[]): Misfit | undefined {
  const { board, shared } = readings;
  const suspects = fits.map((fit): Suspect => {
    const { state, moments } = fit;
    const at = state.kind === "lengths" ? SharedErrors.LENGTHS : (shared.nullOf(state.meter ?? "") ?? 0);
    const mean = moments.mean[at] as number;
    const would = fit.circuits.flatMap(({ sound }) => sound.expected).slice(0, MOST_READINGS);
    const log = LOG_STATE + fit.logEvidence;
    if (state.kind === "lengths") {
      const part = Math.round(mean * LENGTHS_DEVIATION * 100);
      const words = `all lengths of the board are out by about ${part > 0 ? "+" : "−"}${Math.abs(part)} %, or the conductor temperature is not the one written down`;
      return { id: "lengths-of-board", words, innocent: true, log, would, expects: EXPECTS.lengths };
    }
    const off = mean * NULL_DEVIATION;
    const what = off < 0 ? "the leads were nulled on a poor contact" : "the leads were not nulled";
    const amount = `about ${ohms(Math.abs(off))} too ${off < 0 ? "little" : "much"} in every dead test`;
    const words = `${what}: ${amount}${state.meter === "" || state.meter === undefined ? "" : ` with ${state.meter}`}`;
    return { id: "leads-not-nulled", words, innocent: true, log, would, expects: EXPECTS.leads };
  });
  return lineUp({
    kind: "leads-not-nulled",
    path: board.path,
    title: `${board.name}: dead tests that are all out alike`,
    formula: "R1+R2 = (r1 + r2)·L·Ft + leads; Zs = Zdb + (R1+R2)",
    innocentCauses: [
      "a longer pair of leads",
      "lengths taken from drawings",
      "a conductor temperature that was guessed",
    ],
    soundLog: plain.logEvidence,
    suspects,
    nexts: {
      leads: "join the leads as they were used and read them",
      length: "pace one route and set its length down anew",
    },
    readings: plain.circuits.flatMap(({ block, sound }) => readingsOf(block, sound)).slice(0, MOST_READINGS),
    grounds: plain.circuits.flatMap(({ block }) => block.readings.map(({ evidence }) => evidence)),
  });
}

const EXPECTS = {
  lengths: { leads: "about 0 Ω", length: "another length" },
  leads: { leads: "the same surplus", length: "the length as written" },
} as const;

/** The loop at the board against what all its circuits say of it. */
function loopMisfit(readings: BoardReadings, fit: BoardFit, { supply }: Installation): Misfit | undefined {
  const { board, loop, shared, circuits, lineNeutral } = readings;
  const reading = loop?.readings[0];
  if (loop === undefined || reading === undefined || fit.loop === undefined) return undefined;
  const { mean } = fit.loop.moments;
  const seen = Math.max(0, shared.before + (mean[SharedErrors.BEFORE] as number) * shared.beforeDeviation);
  const off = seen - reading.value;
  const x = Math.abs(off);
  const name = loop.isZe ? "Ze" : "Zdb";
  const own = fit.loop.sound.expected.map(
    (one): MisfitReading => ({
      ...one,
      name,
      unit: "ohm",
      shown: reading.evidence.detail.text,
      measured: reading.value,
    }),
  );
  const path = reading.evidence.detail.path;
  const would = (value: number) => [{ path, value, low: 0.9 * value, high: 1.1 * value }];
  const tn = !isKnownFact(supply.earthing) || supply.earthing.word !== "TT";
  const suspect = (
    id: string,
    innocent: boolean,
    prior: number,
    density: number,
    value: number,
    words: string,
    expects: Suspect["expects"],
  ): Suspect => ({ id, innocent, words, expects, would: would(value), log: Math.log(0.03 * prior) + density });
  const ze = readingOf(supply.ze);
  // Two readings that agree were not both misread.
  const borneOut =
    !loop.isZe &&
    isAtOrigin(board) &&
    ze !== undefined &&
    Math.abs(ze.value - reading.value) < 3 * Math.hypot(wholeDeviation(ze), wholeDeviation(reading), 0.02);
  const wrong = suspect(
    "loop-reading-wrong",
    true,
    borneOut ? 3e-4 : 0.12,
    logSpread(Math.max(reading.value, 0.01), 0.005, 1e4),
    seen,
    `${name} was misread, mistyped or taken elsewhere`,
    { zdb: `about ${ohms(seen)}`, zs: "as before" },
  );
  const higher = [
    suspect(
      "earthing-conductor-off",
      false,
      tn && isAtOrigin(board) ? 0.45 : 0.02,
      logSpread(x, 1, 500),
      reading.value,
      `the earthing conductor was off while the circuits were tested: about ${ohms(x)} more on every Zs`,
      { zdb: `about ${ohms(reading.value)} with the conductor back on`, zs: `about ${ohms(x)} less than before` },
    ),
    suspect(
      "joint-before-circuits",
      false,
      0.3,
      logSpread(x, 0.03, 5),
      reading.value,
      `about ${ohms(x)} between where ${name} was read and the circuits: earthing conductor, earth terminal or line terminals of the board`,
      { zdb: `between ${ohms(reading.value)} and ${ohms(seen)}, higher behind the joint`, zs: "as before" },
    ),
    wrong,
  ];
  const lower = [
    suspect(
      "bonding-in-parallel",
      true,
      loop.isZe ? 0.6 : 0.25,
      logSpread(x, 0.02, Math.max(reading.value, 0.03)),
      reading.value,
      "bonding and other earthed metal took part in the circuits' loop tests and not in that at the origin",
      { zdb: `about ${ohms(seen)} with everything connected`, zs: "as before" },
    ),
    wrong,
    ...(lineNeutral === undefined
      ? []
      : [
          suspect(
            "circuits-line-to-neutral",
            true,
            0.05,
            Math.abs(Math.log(seen / lineNeutral)) < 0.3 ? 2 : Number.NEGATIVE_INFINITY,
            reading.value,
            "every Zs was read between line and neutral",
            { zdb: `about ${ohms(reading.value)}`, zs: "higher, line to earth" },
          ),
        ]),
  ];
  return lineUp({
    kind: "board-loop",
    path: board.path,
    title: `${board.name}: every Zs is ${off > 0 ? "higher" : "lower"} than ${name} and R1+R2 give`,
    formula: `Zs − (R1+R2) = ${name} on every circuit`,
    innocentCauses: ["the board was read before the bonding was put back, or after", "Ze was written down for Zdb"],
    soundLog: Math.log(0.97) + fit.loop.sound.logDensity,
    suspects: off > 0 ? higher : lower,
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
