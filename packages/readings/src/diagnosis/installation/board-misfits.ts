import type { LengthFound, Misfit } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { lengthFoundOf } from "@good-grounds/measurement";
import { type BoardFit, type BoardReadings, type BoardState, fitBoard, type JudgedCircuit, NEAR } from "./board-fit.ts";
import { loopMisfit } from "./board-loop-misfit.ts";
import { MOST_READINGS, ohms } from "./board-shown.ts";
import { circuitMisfit, readingsOf } from "./circuit-misfit.ts";
import { lineUp, type Suspect } from "./line-up.ts";
import { LENGTHS_DEVIATION, type LeadsCause, SharedErrors } from "./shared-errors.ts";
import { isLive } from "./slot.ts";
import { LISTED, LOG_TEN } from "./thresholds.ts";

/** How often the leads were not nulled, or all lengths of a board are out, before any reading is looked at. */
const LOG_STATE = Math.log(0.02);

/** So many circuits with dead tests of one meter are needed before something common to them is looked for. */
const ENOUGH = 3;

/** Larger boards are no longer one job with one pair of leads. */
const LARGEST_BOARD = 120;

/** The misfits of one board: what is common to its circuits, the loop before them, then circuit by circuit. */
export function boardMisfits(readings: BoardReadings, installation: Installation): readonly Misfit[] {
  const plain = fitBoard(readings, { kind: "plain" });
  if (plain === undefined) return [];
  const states = statesOf(readings);
  const others =
    readings.circuits.length <= LARGEST_BOARD
      ? states
          .flatMap((state) => (isWorthwhile(state, plain) ? (fitBoard(readings, state) ?? []) : []))
          .filter(isPossible)
      : [];
  const best = [...others].sort((a, b) => b.logEvidence - a.logEvidence)[0];
  const common =
    best !== undefined && LOG_STATE + best.logEvidence - plain.logEvidence >= LISTED * LOG_TEN
      ? commonMisfit(readings, plain, others)
      : undefined;
  const fit = common === undefined || best === undefined ? plain : best;
  const loop = loopMisfit(readings, fit, installation);
  // Where something of the whole board clearly accounts for a circuit, it is told of once, for the board.
  const ofBoard = common?.clear === true || loop?.clear === true;
  const explained = ({ sound }: JudgedCircuit) => ofBoard && sound.distance <= NEAR;
  return [
    ...(common === undefined ? [] : [common]),
    ...(loop === undefined ? [] : [loop]),
    ...fit.circuits.flatMap((one) => circuitMisfit(explained(one) ? { ...one, disagrees: false } : one) ?? []),
  ];
}

/** What is common shows in the shared error itself, or in several circuits that are out: else nothing is fitted anew. */
function isWorthwhile({ leads }: BoardState, { circuits, moments }: BoardFit): boolean {
  const drawn = moments.mean[leads?.at ?? SharedErrors.LENGTHS] as number;
  return Math.abs(drawn) > DRAWN || circuits.filter(({ logOdds }) => logOdds > 0).length > 1;
}

/** Deviations of a shared error from what is usual. */
const DRAWN = 1;

/** Lengths of a whole board are guessed short or long, but not so; and so much is what estimating leaves anyway. */
const MOST_LENGTHS_OUT = 0.6;
const LEAST_LENGTHS_OUT: Readonly<Record<LengthFound, number>> = {
  taped: 0.05,
  "by-drawing": 0.1,
  estimated: 0.25,
  unknown: 0.5,
};

function isPossible({ state, moments, circuits }: BoardFit): boolean {
  const part = (moments.mean[SharedErrors.LENGTHS] as number) * LENGTHS_DEVIATION;
  if (state.kind !== "lengths") return true;
  const least = circuits.map(({ block }) => LEAST_LENGTHS_OUT[lengthFoundOf(block.circuit.cable.lengthFound)]);
  return Math.abs(part) >= Math.max(...least) && Math.abs(part) <= MOST_LENGTHS_OUT;
}

function statesOf({ circuits, shared }: BoardReadings): readonly BoardState[] {
  const dead = ({ cause }: LeadsCause) =>
    circuits.filter(({ slots, readings }) => slots.some((slot, i) => !isLive(slot) && readings[i]?.shared.has(cause)))
      .length >= ENOUGH;
  const known = circuits.filter(({ cableKnown }) => cableKnown).length >= ENOUGH;
  return [
    ...shared.leads.filter(dead).map((leads): BoardState => ({ kind: "leads-not-nulled", leads })),
    ...(known ? [{ kind: "lengths" } as const] : []),
  ];
}

/** Something common to the readings of a board: what fits all of it better than a fault in each circuit. */
function commonMisfit(readings: BoardReadings, plain: BoardFit, fits: readonly BoardFit[]): Misfit | undefined {
  const { board } = readings;
  const suspects = fits.map((fit): Suspect => {
    const { state, moments } = fit;
    const { leads } = state;
    const mean = moments.mean[leads?.at ?? SharedErrors.LENGTHS] as number;
    const would = fit.circuits.flatMap(({ sound }) => sound.expected).slice(0, MOST_READINGS);
    const log = LOG_STATE + fit.logEvidence;
    if (leads === undefined) {
      const part = Math.round(mean * LENGTHS_DEVIATION * 100);
      const words = `all lengths of the board are out by about ${part > 0 ? "+" : "−"}${Math.abs(part)} %, or the conductor temperature is not the one written down`;
      return { id: "lengths-of-board", words, innocent: true, log, would, expects: EXPECTS.lengths };
    }
    const off = mean * leads.deviation;
    const what = off < 0 ? "the leads were nulled on a poor contact" : "the leads were not nulled";
    const amount = `about ${ohms(Math.abs(off))} too ${off < 0 ? "little" : "much"} in every dead test`;
    const words = `${what}: ${amount}${leads.meter === "" ? "" : ` with ${leads.meter}`}`;
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
