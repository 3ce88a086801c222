import { isAtOrigin } from "@good-grounds/computations";
import { type EarthingSystem, isKnownFact } from "@good-grounds/core";
import type { Board, Circuit, Installation } from "@good-grounds/inspection";
import { lengthFoundIn } from "@good-grounds/measurement";
import { seenAt } from "../ring/seen.ts";
import { type Block, type CircuitBlock, circuitBlock, GUESS } from "./circuit-model.ts";
import { CIRCUIT_FAULTS } from "./explanations/index.ts";
import type { Surroundings } from "./fault.ts";
import { type Reading, readingOf } from "./fitted-reading.ts";
import { logSum } from "./gaussian.ts";
import { type FaultFit, faultFits, type SoundFit, soundFit } from "./judge-block.ts";
import { rowsOf } from "./rows-of-board.ts";
import { LENGTHS_DEVIATION, type LeadsCause, SharedErrors } from "./shared-errors.ts";
import {
  type Belief,
  belief,
  type Contribution,
  contributionOf,
  logEvidence,
  type Moments,
  momentsOf,
  updated,
} from "./shared-fit.ts";
import { isLive } from "./slot.ts";
import { LARGEST_LOOP } from "./thresholds.ts";

/** How often something is wrong with the readings of a circuit, or with the loop of a board, before any is looked at. */
const FAULTY = 0.03;
const LOG_FAULTY = Math.log(FAULTY);
const LOG_SOUND = Math.log(1 - FAULTY);

/** Closer than this to what was expected (squared distance in deviations), no explanation can be more likely than chance. */
export const NEAR = 7;

/** One in so many places of a board may be left out before the shared errors are fitted anew. */
const AT_ONCE = 12;

/** Something that may be true of all readings of a board. */
export interface BoardState {
  readonly kind: "plain" | "leads-not-nulled" | "lengths";
  /** Whose leads. */
  readonly leads?: LeadsCause;
}

/** Readings of a board's circuits and the loop before them, made ready. */
export interface BoardReadings {
  readonly board: Board;
  readonly shared: SharedErrors;
  readonly circuits: readonly CircuitBlock[];
  /** The loop at the board: Zdb, or Ze where the board is at the origin and has no reading of its own. */
  readonly loop: LoopBlock | undefined;
  /** Whether the rest can say that the loop at the board is another than it was read. */
  readonly loopInDoubt: boolean;
  readonly lineNeutral: number | undefined;
  readonly earthing: EarthingSystem | undefined;
  /** Circuits, by path, whose readings a check found not to agree: they are looked at whatever the rest says. */
  readonly disagreeing: ReadonlySet<string>;
}

interface LoopBlock extends Block {
  readonly isZe: boolean;
}

/** A circuit whose readings were held against the rest of the board. */
export interface JudgedCircuit {
  readonly block: CircuitBlock;
  readonly sound: SoundFit;
  /** Most likely first; empty where the readings are near what was expected. */
  readonly faults: readonly FaultFit[];
  /** Natural logarithm of the odds of the explanations together against sound. */
  readonly logOdds: number;
  /** The same where a length that is a guess counts as sound. */
  readonly logOddsBeyondGuess: number;
  /** Whether a check found its readings not to agree. */
  readonly disagrees: boolean;
}

export interface BoardFit {
  readonly state: BoardState;
  readonly logEvidence: number;
  readonly moments: Moments;
  readonly circuits: readonly JudgedCircuit[];
  /** What the circuits alone say of the loop at the board, with the odds that its own reading is out. */
  readonly loop: { readonly sound: SoundFit; readonly logOdds: number; readonly moments: Moments } | undefined;
}

/** Gathers what a board's fit needs; undefined where nothing can disagree. */
export function boardReadings(
  board: Board,
  installation: Installation,
  fedBy: ReadonlyMap<string, readonly Board[]>,
  lineNeutral: number | undefined,
  disagreeing: ReadonlySet<string>,
): BoardReadings | undefined {
  const zdb = readingOf(board.zdb);
  const ze = isAtOrigin(board) ? readingOf(installation.supply.ze) : undefined;
  const loop = zdb ?? ze;
  const all: Reading[] = [];
  const loops: number[] = [];
  for (const { readings } of board.circuits) {
    for (const evidence of [readings.r1r2, readings.r2Only, readings.zs, readings.r1]) {
      const reading = readingOf(evidence);
      if (reading === undefined) continue;
      all.push(reading);
      if (evidence === readings.zs) loops.push(reading.value);
    }
  }
  if (loop !== undefined) all.push(loop);
  loops.sort((a, b) => a - b);
  const before = loop?.value ?? Math.min(LIKELY_LOOP, loops[0] ?? LIKELY_LOOP);
  if (!(before < LARGEST_LOOP)) return undefined;
  const shared = new SharedErrors(all, before, Math.min(LARGEST_LOOP, loops[loops.length >> 1] ?? 0));
  const circuits = board.circuits.flatMap((circuit) => {
    const seen = installation.observations.length > 0 ? seenAt(circuit, installation) : undefined;
    const block = circuitBlock(
      asTheJobTells(circuit, installation),
      fedBy.get(`${board.id} ${circuit.id}`) ?? [],
      shared,
      seen,
    );
    return block === undefined ? [] : [block];
  });
  if (circuits.length === 0) return undefined;
  const { earthing } = installation.supply;
  return {
    board,
    shared,
    circuits: circuits.map((block) => withGuess(block, circuits)),
    loop: loop && loopBlock(loop, shared, zdb === undefined),
    loopInDoubt:
      circuits.filter(({ slots }) => slots.some(isLive)).length + Number(zdb !== undefined && ze !== undefined) > 1,
    lineNeutral,
    earthing: isKnownFact(earthing) ? earthing.word : undefined,
    disagreeing,
  };
}

const LIKELY_LOOP = 0.3;

/** A circuit with its length as good as the job shows it to be, as the checks of agreement take it. */
function asTheJobTells(circuit: Circuit, installation: Installation): Circuit {
  const lengthFound = lengthFoundIn(circuit, installation);
  return lengthFound === circuit.cable.lengthFound ? circuit : { ...circuit, cable: { ...circuit.cable, lengthFound } };
}

function loopBlock(reading: Reading, shared: SharedErrors, isZe: boolean): LoopBlock {
  return {
    isZe,
    slots: ["zs"],
    readings: [reading],
    mean: Float64Array.of(shared.before),
    covariance: Float64Array.of(shared.ownOf(reading) ** 2 + 1e-8),
    shared: [shared.row("zs", reading, 0)],
  };
}

/** What is believed of the shared errors before any reading, under a state of the board. */
function priorOf(shared: SharedErrors, state: BoardState): Belief {
  const means = new Array<number>(shared.size).fill(0);
  const deviations = new Array<number>(shared.size).fill(1);
  if (state.kind === "lengths") deviations[SharedErrors.LENGTHS] = LENGTHS_OUT / LENGTHS_DEVIATION;
  if (state.leads !== undefined) {
    const { at, deviation } = state.leads;
    means[at] = LEADS / deviation;
    deviations[at] = LEADS_SPREAD / deviation;
  }
  return belief(means, deviations);
}

/** Leads that were not nulled add about this much, Ω, give or take. */
const LEADS = 0.2;
const LEADS_SPREAD = 0.12;

/** Deviation of all lengths of a board together when they were stated for another temperature or by a bad guess, a part. */
const LENGTHS_OUT = 0.3;

interface Part {
  readonly block: Block;
  readonly circuit: CircuitBlock | undefined;
  readonly contribution: Contribution;
}

/**
 * Fits the shared errors of a board to the places that agree, leaving out one place after the other, the worst first,
 * where an explanation of its own is more likely than that it is sound.
 */
export function fitBoard(readings: BoardReadings, state: BoardState): BoardFit | undefined {
  const trusting = fitFrom(readings, state, true);
  // One loop reading can be more exact than all circuits together: where several are out, it may be the one that is.
  const out = trusting?.circuits.filter(({ logOdds }) => logOdds > 0).length ?? 0;
  if (readings.loop === undefined || out < 2 || !readings.loopInDoubt) return trusting;
  const doubting = fitFrom(readings, state, false);
  return trusting === undefined || (doubting !== undefined && doubting.logEvidence > trusting.logEvidence)
    ? doubting
    : trusting;
}

function fitFrom(readings: BoardReadings, state: BoardState, loopTrusted: boolean): BoardFit | undefined {
  const { shared, circuits, loop } = readings;
  const prior = priorOf(shared, state);
  const parts: Part[] = [];
  for (const block of loop === undefined ? circuits : [loop, ...circuits]) {
    const contribution = contributionOf(
      block,
      Float64Array.from(block.readings, ({ value }) => value),
      shared.size,
    );
    const circuit = block === loop ? undefined : (block as CircuitBlock);
    if (contribution !== undefined) parts.push({ block, circuit, contribution });
  }
  const leftOut = new Set<Part>(loopTrusted ? [] : parts.filter(({ circuit }) => circuit === undefined));
  let all = prior;
  for (const part of parts) if (!leftOut.has(part)) all = updated(all, part.contribution, 1);
  if (isStrained(all)) {
    // Where most places are out, the shared errors would take their part: each place is held against what is usual first.
    const loopPart = parts.find(({ circuit }) => circuit === undefined);
    const usual = momentsOf(loopPart === undefined || !loopTrusted ? prior : updated(prior, loopPart.contribution, 1));
    for (const part of parts) {
      const fit = part === loopPart || usual === undefined ? undefined : soundFit(part.block, usual);
      if (fit === undefined || !(fit.distance > NEAR)) continue;
      leftOut.add(part);
      all = updated(all, part.contribution, -1);
    }
  }
  let looks = 2 * parts.length + 20;
  let seen = eachApart(parts, leftOut, all);
  for (let looking = true; looking; ) {
    looking = false;
    // On a large board several are left out before the rest is fitted anew.
    let most = Math.max(1, Math.floor((parts.length - leftOut.size) / AT_ONCE));
    for (const { part, fit, moments } of worstFirst(seen)) {
      if (looks-- <= 0 || most <= 0) break;
      if (oddsOf(part, fit, moments, readings).logOdds <= 0) continue;
      leftOut.add(part);
      all = updated(all, part.contribution, -1);
      looking = true;
      most--;
    }
    if (looking) seen = eachApart(parts, leftOut, all);
  }
  const moments = momentsOf(all);
  if (moments === undefined) return undefined;
  let densities = 0;
  let evidence = 0;
  const judged: JudgedCircuit[] = [];
  let judgedLoop: BoardFit["loop"];
  for (const part of parts) {
    const out = leftOut.has(part);
    const { moments: apart, fit: sound } = (out ? undefined : seen.get(part)) ?? {
      moments,
      fit: soundFit(part.block, moments),
    };
    if (!out) {
      densities += part.contribution.logDensity;
      evidence += LOG_SOUND;
    }
    if (sound === undefined) continue;
    const { logOdds, logOddsBeyondGuess, faults } =
      sound.distance > NEAR || out || isDisagreeing(part, readings) ? oddsOf(part, sound, apart, readings) : NO_ODDS;
    if (out) evidence += LOG_SOUND + sound.logDensity + Math.max(0, logOdds);
    if (part.circuit === undefined) judgedLoop = { sound, logOdds, moments: apart };
    else {
      const disagrees = isDisagreeing(part, readings);
      judged.push({ block: part.circuit, sound, logOdds, logOddsBeyondGuess, faults, disagrees });
    }
  }
  return {
    state,
    logEvidence: evidence + logEvidence(prior, all, densities),
    moments,
    circuits: judged,
    loop: judgedLoop,
  };
}

/** No shared error is this many deviations from what is usual; what a state of the board supposes is in its prior. */
const STRAINED = 30;

function isStrained(all: Belief): boolean {
  const moments = momentsOf(all);
  return moments?.mean.some((mean, at) => at !== SharedErrors.BEFORE && Math.abs(mean) > STRAINED) === true;
}

function isDisagreeing({ circuit }: Part, { disagreeing }: BoardReadings): boolean {
  return circuit !== undefined && disagreeing.has(circuit.circuit.path.join("/"));
}

interface Apart {
  readonly part: Part;
  readonly fit: SoundFit;
  readonly moments: Moments;
}

/** Each place held against all others that are not left out. */
function eachApart(parts: readonly Part[], leftOut: ReadonlySet<Part>, all: Belief): ReadonlyMap<Part, Apart> {
  const seen = new Map<Part, Apart>();
  for (const part of parts) {
    if (leftOut.has(part)) continue;
    const moments = momentsOf(updated(all, part.contribution, -1));
    const fit = moments && soundFit(part.block, moments);
    if (fit !== undefined && moments !== undefined) seen.set(part, { part, fit, moments });
  }
  return seen;
}

/** The places that lie apart from what the others say, furthest first. */
function worstFirst(seen: ReadonlyMap<Part, Apart>): readonly Apart[] {
  return [...seen.values()]
    .filter(({ fit }) => fit.distance > NEAR)
    .sort((a, b) => b.fit.distance - b.part.block.slots.length - (a.fit.distance - a.part.block.slots.length));
}

function oddsOf({ block, circuit }: Part, sound: SoundFit, moments: Moments, readings: BoardReadings) {
  if (circuit === undefined && !readings.loopInDoubt) return NO_ODDS;
  if (circuit === undefined) {
    // A loop reading that is out may be anything over three decades.
    const value = Math.max(block.readings[0]?.value ?? 0, 0.01);
    const anywhere = -Math.log(value * Math.log(1000));
    const logOdds = LOG_FAULTY + anywhere - LOG_SOUND - sound.logDensity;
    return { logOdds, logOddsBeyondGuess: logOdds, faults: [] };
  }
  const faults = [...faultFits(CIRCUIT_FAULTS, circuit, moments, aroundOf(circuit, moments, readings))].sort(
    (a, b) => b.logEvidence - a.logEvidence,
  );
  const together = logSum(faults.map((one) => one.logEvidence));
  const is = LOG_SOUND + sound.logDensity;
  const length = faults.find(({ fault }) => fault.id === "length-wrong");
  const guessed =
    length === undefined || circuit.guess === 0 ? [] : [Math.log(circuit.guess) + length.logEvidence - length.logPrior];
  return {
    logOdds: LOG_FAULTY + together - is,
    logOddsBeyondGuess: LOG_FAULTY + together - logSum([is, ...guessed]),
    faults,
  };
}

const NO_ODDS = {
  logOdds: Number.NEGATIVE_INFINITY,
  logOddsBeyondGuess: Number.NEGATIVE_INFINITY,
  faults: [],
} as const;

/** So far, as a logarithm, the other circuits of a board are from their lengths in the middle where those are guesses. */
const GUESSED_LENGTHS = 0.07;
/** So many other circuits have to say so. */
const ENOUGH_OTHERS = 3;

/** A length of which nobody said how it was found is a guess where the others of its board are plainly guesses. */
function withGuess(block: CircuitBlock, all: readonly CircuitBlock[]): CircuitBlock {
  if (isKnownFact(block.circuit.cable.lengthFound)) return block;
  const apart = all.flatMap((other) => (other === block ? [] : (lengthsApart(other) ?? [])));
  if (apart.length < ENOUGH_OTHERS) return block;
  apart.sort((a, b) => a - b);
  const middle = apart[apart.length >> 1] as number;
  return middle > GUESSED_LENGTHS ? { ...block, guess: GUESS.estimated } : block;
}

function lengthsApart({ cableKnown, nominal, slots, readings }: CircuitBlock): number | undefined {
  const read = readings[slots.indexOf("r1r2")]?.value;
  if (!cableKnown || read === undefined || !(read > 0.1)) return undefined;
  return Math.abs(Math.log(read / (nominal.line + nominal.cpc)));
}

/** Rows further apart than this are not taken for each other. */
const MOST_ROWS_APART = 30;

/** What is known around a circuit once the shared errors are. */
function aroundOf(circuit: CircuitBlock, moments: Moments, readings: BoardReadings): Surroundings {
  const { shared, lineNeutral, circuits, earthing } = readings;
  const off = (moments.mean[SharedErrors.BEFORE] as number) * shared.beforeDeviation;
  const others = circuits.filter((other) => other !== circuit);
  let rows: ReturnType<typeof rowsOf> | undefined;
  return {
    before: Math.max(0.005, shared.before + off),
    lineNeutral,
    tt: earthing === "TT",
    combined: earthing === "TN-C-S",
    others,
    rows: () => {
      const at = circuits.indexOf(circuit);
      const near = circuits.slice(Math.max(0, at - MOST_ROWS_APART), at + MOST_ROWS_APART + 1);
      rows ??= rowsOf(
        circuit,
        near.filter((other) => other !== circuit),
        moments,
        shared,
      );
      return rows;
    },
  };
}
