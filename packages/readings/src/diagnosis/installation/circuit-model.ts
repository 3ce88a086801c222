import { type Evidence, type Ground, isKnownFact, type LengthFound, RECTANGULAR, type Unit } from "@good-grounds/core";
import type { Board, Circuit } from "@good-grounds/inspection";
import {
  BETWEEN_TESTS,
  CABLE_DOUBT,
  type CableExpectation,
  CONDUCTOR_TOLERANCE,
  type CoreExpectation,
  cableExpectation,
  type Doubted,
  exactly,
  lengthWithin,
  sumOf,
  timesOf,
} from "@good-grounds/measurement";
import { FALLBACK, type Reading, readingOf } from "./fitted-reading.ts";
import { addOuter } from "./gaussian.ts";
import type { SharedErrors } from "./shared-errors.ts";
import { isLive, type Slot } from "./slot.ts";

/** What is true of a circuit, in Ω: line and protective conductor to the far end, and the loop before it. */
export interface Nominal {
  readonly line: number;
  readonly cpc: number;
  readonly before: number;
}

/** Readings of one place as a normal vector: mean and covariance without the errors that other places share. */
export interface Block {
  readonly slots: readonly Slot[];
  readonly readings: readonly Reading[];
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  /** One row for each reading: how far each shared error moves it, in its own deviations. */
  readonly shared: readonly Float64Array[];
}

export interface CircuitBlock extends Block {
  readonly circuit: Circuit;
  readonly nominal: Nominal;
  readonly ring: boolean;
  /** Resistance per metre of line and protective conductor, Ω/m, and the length, where known. */
  readonly line: number | undefined;
  readonly cpc: number | undefined;
  readonly length: number | undefined;
  /** Whether the cable settles what R1+R2 should be. */
  readonly cableKnown: boolean;
  /** Conductors of a ring that read as open from end to end. */
  readonly openEnds: readonly ("r1" | "rn" | "r2")[];
  /** How likely it is that the length is a guess that says nothing, 0 to 1. */
  readonly guess: number;
  /** Variance of what each reading has by itself, Ω². */
  readonly noise: Float64Array;
  /** How many times likelier something seen at the circuit makes explanations, by word. */
  readonly seen: ReadonlyMap<string, number>;
  /** What was assumed on the way, as leaves. */
  readonly grounds: readonly Ground[];
}

/** Spurs of a ring and points off its middle move the reading at the furthest point by the resistance of some metres. */
const SPUR_METRES = 2;

/** What line and protective conductor of a circuit may be apart in size where one of them is not known, as a deviation. */
const UNKNOWN_SIZE = 0.8;

/** What is known of a circuit before its readings are fitted. */
interface Taken {
  readonly taken: readonly (readonly [Slot, Reading])[];
  readonly ring: boolean;
  readonly cable: CableExpectation;
  readonly nominal: Nominal;
  /** Whether size and material of both conductors are known, and with them the length. */
  readonly sizesKnown: boolean;
  readonly cableKnown: boolean;
  /** Whether size, material and length of the line conductor are known, and of the protective conductor nothing. */
  readonly lineKnown: boolean;
}

/** A sheath or an armour has hardly less than this part of the line conductor's resistance. */
const LEAST_CPC = 0.2;

/** What was seen at a circuit: how many times likelier it makes explanations, and the facts it rests on. */
export interface Seen {
  readonly times: ReadonlyMap<string, number>;
  readonly grounds: readonly Ground[];
}

/** How often a length that was found so is a guess, not merely out by what that way of finding leaves. */
export const GUESS: Readonly<Record<LengthFound, number>> = { taped: 0, "by-drawing": 0, estimated: 0.2, unknown: 0.5 };

const NOTHING_SEEN: Seen = { times: new Map(), grounds: [] };

/** The readings of a circuit as a block; undefined where nothing could disagree with anything. */
export function circuitBlock(
  circuit: Circuit,
  fed: readonly Board[],
  shared: SharedErrors,
  seen: Seen = NOTHING_SEEN,
): CircuitBlock | undefined {
  const { readings, shape, cable } = circuit;
  const ring = isKnownFact(shape) && shape.word === "ring";
  const taken = readingsTaken(circuit, ring, fed);
  const expected = cableExpectation({ ...cable, temperature: readings.temperature });
  const { core, length } = expected;
  const [line, cpc] = [core.line?.perMetre.value, core.cpc?.perMetre.value];
  const sizesKnown = line !== undefined && cpc !== undefined;
  const cableKnown = sizesKnown && length !== undefined && length.value > 0;
  if (taken.length < (cableKnown ? 1 : 2)) return undefined;
  const shownAt = (slot: Slot) => taken.find(([one]) => one === slot)?.[1].value;
  const share = ring ? 1 / 4 : 1;
  const whole = shownAt("r1r2") ?? Math.max(0.05, (shownAt("zs") ?? shownAt("fed") ?? 0) - shared.before);
  const lineShare = sizesKnown ? line / (line + cpc) : 0.45;
  const lineKnown = line !== undefined && cpc === undefined && length !== undefined && length.value > 0;
  const lineOhms = cableKnown || lineKnown ? line * length.value * share : whole * lineShare;
  const cpcOhms = cableKnown
    ? cpc * length.value * share
    : lineKnown
      ? Math.max(LEAST_CPC * lineOhms, whole - lineOhms)
      : whole * (1 - lineShare);
  const nominal = { line: lineOhms, cpc: cpcOhms, before: shared.before };
  return {
    circuit,
    slots: taken.map(([slot]) => slot),
    readings: taken.map(([, reading]) => reading),
    mean: Float64Array.from(taken, ([slot]) => recorded(slot, nominal)),
    covariance: covarianceOf({ taken, ring, cable: expected, nominal, sizesKnown, cableKnown, lineKnown }, shared),
    shared: taken.map(([slot, reading]) => shared.row(slot, reading, cableKnown ? resistanceIn(slot, nominal) : 0)),
    nominal,
    ring,
    line,
    cpc,
    length: length?.value,
    cableKnown,
    guess: isKnownFact(cable.lengthFound) ? GUESS[cable.lengthFound.word] : 0,
    noise: Float64Array.from(taken, ([, reading]) => shared.ownOf(reading) ** 2 + 1e-12),
    seen: seen.times,
    openEnds: ring ? openEndsOf(circuit) : [],
    grounds: [
      ...seen.grounds,
      ...(cableKnown
        ? [
            cable.line,
            cable.cpc,
            cable.length,
            lengthWithin(cable.length, cable.lengthFound),
            readings.temperature,
            CONDUCTOR_TOLERANCE,
          ]
        : []),
      ...(taken.some(([, reading]) => !reading.stated) ? [FALLBACK] : []),
    ],
  };
}

/** The readings that are fitted, each with its place. */
function readingsTaken(
  { readings }: Circuit,
  ring: boolean,
  fed: readonly Board[],
): readonly (readonly [Slot, Reading])[] {
  const taken: (readonly [Slot, Reading])[] = [];
  const add = (slot: Slot, evidence: Evidence<Unit>) => {
    const reading = readingOf(evidence);
    // Readings in parallel combinations are divided by; nought and what no circuit has are left out.
    if (reading !== undefined && reading.value < LARGEST && taken.length < MOST_SLOTS) taken.push([slot, reading]);
  };
  add("r1r2", readings.r1r2);
  add("zs", readings.zs);
  if (ring) {
    add("r1", readings.r1);
    add("rn", readings.rn);
    add("re", readings.r2);
  } else add("r2", readings.r2Only);
  for (const board of fed) add("fed", board.zdb);
  return taken;
}

/** Covariance of the readings without the errors that other circuits share. */
function covarianceOf(known: Taken, shared: SharedErrors): Float64Array {
  const { taken, ring, cable, nominal, sizesKnown, cableKnown, lineKnown } = known;
  const covariance = new Float64Array(taken.length * taken.length);
  const column = (of: (slot: Slot, i: number) => number) =>
    addOuter(
      covariance,
      Float64Array.from(taken, ([slot], i) => of(slot, i)),
    );
  for (const [i, [, reading]] of taken.entries()) {
    const own = shared.ownOf(reading);
    covariance[i * taken.length + i] = own * own + 1e-12;
  }
  if (cableKnown || lineKnown) {
    const doubted = taken.map(([slot]) => inCable(slot, cable, ring));
    const causes = new Set(doubted.flatMap(({ errors }) => [...errors.keys()]));
    for (const cause of causes) column((_, i) => doubted[i]?.errors.get(cause) ?? 0);
    if (lineKnown) column((slot) => (3 + 1 / (nominal.cpc + 0.01)) * cpcIn(slot, nominal));
  } else {
    const whole = nominal.line + nominal.cpc;
    column((slot) => (3 + 1 / (whole + 0.01)) * resistanceIn(slot, nominal));
    const apart = sizesKnown ? CABLE_DOUBT.core * RECTANGULAR : UNKNOWN_SIZE;
    column((slot) => apart * lineIn(slot, nominal));
    column((slot) => apart * cpcIn(slot, nominal));
    column((slot) => (slot === "rn" ? apart * 4 * nominal.line : 0));
  }
  column((slot) => (isLive(slot) ? BETWEEN_TESTS_DEVIATION * (nominal.line + nominal.cpc) : 0));
  if (ring) {
    const { line, cpc } = cable.core;
    const metre = line !== undefined && cpc !== undefined ? line.perMetre.value + cpc.perMetre.value : 0.02;
    column((slot) => (slot === "r1r2" || isLive(slot) ? SPUR_METRES * metre : 0));
  }
  return covariance;
}

const BETWEEN_TESTS_DEVIATION = (BETWEEN_TESTS.high - 1) * RECTANGULAR;

/** What the cable adds to a reading of a sound circuit. */
function inCable(slot: Slot, { core }: CableExpectation, ring: boolean): Doubted {
  const ends: Nominal = { line: 1, cpc: 1, before: 0 };
  const share = ring ? 1 / 4 : 1;
  const part = (times: number, one: CoreExpectation | undefined) =>
    times === 0 || one?.whole === undefined ? [] : [timesOf(times * share, one.whole)];
  return sumOf(
    exactly(0),
    ...part(lineIn(slot, ends), core.line),
    ...part(cpcIn(slot, ends), core.cpc),
    ...part(slot === "rn" ? 4 : 0, core.neutral ?? core.line),
  );
}

const MOST_SLOTS = 8;

function openEndsOf({ readings: { r1, rn, r2 } }: Circuit) {
  const isOpen = (end: Evidence<"ohm">) => end.kind === "measured" && end.detail.bound === "above";
  return (["r1", "rn", "r2"] as const).filter((_, i) => isOpen([r1, rn, r2][i] as Evidence<"ohm">));
}

/** No loop or conductor that is read to tell anything has more, Ω. */
const LARGEST = 1e5;

/** What a reading would show of a sound circuit. */
export function recorded(slot: Slot, nominal: Nominal): number {
  return resistanceIn(slot, nominal) + (isLive(slot) ? nominal.before : 0);
}

function resistanceIn(slot: Slot, nominal: Nominal): number {
  return lineIn(slot, nominal) + cpcIn(slot, nominal) + (slot === "rn" ? 4 * nominal.line : 0);
}

function lineIn(slot: Slot, { line }: Nominal): number {
  if (slot === "r2" || slot === "re" || slot === "rn") return 0;
  return slot === "r1" ? 4 * line : line;
}

function cpcIn(slot: Slot, { cpc }: Nominal): number {
  if (slot === "r1" || slot === "rn") return 0;
  return slot === "re" ? 4 * cpc : cpc;
}
