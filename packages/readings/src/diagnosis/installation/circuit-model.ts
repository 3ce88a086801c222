import {
  type Assumed,
  assumed,
  type Evidence,
  type Ground,
  isKnown,
  isKnownFact,
  Reckoner,
  TERM,
  type Unit,
} from "@good-grounds/core";
import type { Board, Circuit } from "@good-grounds/inspection";
import { CONDUCTOR_TOLERANCE, perMetre, testFactor } from "@good-grounds/measurement";
import { addOuter } from "./gaussian.ts";
import { FALLBACK, NULL_DEVIATION, type Reading, readingOf } from "./noise.ts";
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
  /** What was assumed on the way, as leaves. */
  readonly grounds: readonly Ground[];
}

/** Conductors of one make differ from each other by this deviation, as a part. */
const CONDUCTOR_DEVIATION = 0.015;

/** Conductors differ between the dead and the live test by about five kelvin. */
const WARMTH_DEVIATION = 0.02;

/** Contacts of probe and plug in a loop test, Ω. */
const CONTACT_DEVIATION = 0.01;

/** Spurs of a ring and points off its middle move the reading at the furthest point by the resistance of some metres. */
const SPUR_METRES = 2;

const LENGTH_PART = 0.04;
const LENGTH_METRES = 0.5;

/** The leaf that says how a length given as one figure is taken. */
const STATED_LENGTH: Assumed<"ratio"> = assumed(
  TERM.conductorTolerance,
  1,
  "a length stated as one figure is taken as right to about 8 % and a metre, a size as the one in place",
  [0.92, 1.08],
  { work: "experience of measured cables", edition: "none", basis: "common-practice" },
);

const reckon = new Reckoner(false);

/** What is known of a circuit before its readings are fitted. */
interface Taken {
  readonly taken: readonly (readonly [Slot, Reading])[];
  readonly ring: boolean;
  readonly expectation: CableExpectation;
  readonly nominal: Nominal;
  /** Deviation of the conductors' resistance from the nominal one, as a part. */
  readonly spread: number;
}

/** The readings of a circuit as a block; undefined where nothing could disagree with anything. */
export function circuitBlock(circuit: Circuit, fed: readonly Board[], shared: SharedErrors): CircuitBlock | undefined {
  const { readings, shape, cable } = circuit;
  const ring = isKnownFact(shape) && shape.word === "ring";
  const taken = readingsTaken(circuit, ring, fed);
  const expectation = cableExpectation(circuit);
  const { line, cpc, length } = expectation;
  const cableKnown = line !== undefined && cpc !== undefined && length !== undefined;
  if (taken.length < (cableKnown ? 1 : 2)) return undefined;
  const shownAt = (slot: Slot) => taken.find(([one]) => one === slot)?.[1].value;
  const share = ring ? 1 / 4 : 1;
  const whole = shownAt("r1r2") ?? Math.max(0.05, (shownAt("zs") ?? shownAt("fed") ?? 0) - shared.before);
  const lineShare = line !== undefined && cpc !== undefined ? line / (line + cpc) : 0.45;
  const lineOhms = cableKnown ? line * length * share : whole * lineShare;
  const cpcOhms = cableKnown ? cpc * length * share : whole * (1 - lineShare);
  const nominal = { line: lineOhms, cpc: cpcOhms, before: shared.before };
  const spread = cableKnown ? expectation.deviation : 3 + 1 / (whole + 0.01);
  return {
    circuit,
    slots: taken.map(([slot]) => slot),
    readings: taken.map(([, reading]) => reading),
    mean: Float64Array.from(taken, ([slot]) => recorded(slot, nominal)),
    covariance: covarianceOf({ taken, ring, expectation, nominal, spread }, shared),
    shared: taken.map(([slot, reading]) => shared.row(slot, reading, cableKnown ? resistanceIn(slot, nominal) : 0)),
    nominal,
    ring,
    line,
    cpc,
    length,
    cableKnown,
    openEnds: ring ? openEndsOf(circuit) : [],
    grounds: [
      ...(cableKnown
        ? [cable.line, cable.cpc, cable.length, readings.temperature, CONDUCTOR_TOLERANCE, STATED_LENGTH]
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
function covarianceOf({ taken, ring, expectation, nominal, spread }: Taken, shared: SharedErrors): Float64Array {
  const covariance = new Float64Array(taken.length * taken.length);
  for (const [i, [, reading]] of taken.entries()) {
    const followed = shared.nullOf(reading.meter) !== undefined;
    const own = followed ? reading.own : Math.hypot(reading.own, reading.scale * reading.value, NULL_DEVIATION);
    covariance[i * taken.length + i] = own * own + 1e-12;
  }
  const column = (of: (slot: Slot) => number) =>
    addOuter(
      covariance,
      Float64Array.from(taken, ([slot]) => of(slot)),
    );
  column((slot) => spread * resistanceIn(slot, nominal));
  column((slot) => CONDUCTOR_DEVIATION * lineIn(slot, nominal));
  column((slot) => CONDUCTOR_DEVIATION * cpcIn(slot, nominal));
  column((slot) => (slot === "rn" ? CONDUCTOR_DEVIATION * 4 * nominal.line : 0));
  column((slot) => (isLive(slot) ? WARMTH_DEVIATION * (nominal.line + nominal.cpc) : 0));
  column((slot) => (slot === "zs" ? CONTACT_DEVIATION : 0));
  for (let k = 0; k < taken.length; k++) {
    if (taken[k]?.[0] === "fed")
      addOuter(
        covariance,
        Float64Array.from(taken, (_, i) => (i === k ? CONTACT_DEVIATION : 0)),
      );
  }
  if (ring) {
    const { line, cpc } = expectation;
    const metre = line !== undefined && cpc !== undefined ? line + cpc : 0.02;
    column((slot) => (slot === "r1r2" || isLive(slot) ? SPUR_METRES * metre : 0));
  }
  return covariance;
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

interface CableExpectation {
  readonly line: number | undefined;
  readonly cpc: number | undefined;
  readonly length: number | undefined;
  /** Deviation of the product, as a part. */
  readonly deviation: number;
}

/** What size, material, length and temperature say of the conductors, in Ω/m at the temperature of the test. */
function cableExpectation({ cable, readings }: Circuit): CableExpectation {
  const arrangement = cable.cpcArrangement;
  const core = !isKnownFact(arrangement) || arrangement.word === "in-cable" || arrangement.word === "separate";
  const factor = testFactor(readings.temperature);
  const ohms = (area: Evidence<"square-millimetre">) => {
    if (!isKnown(cable.length) || !isKnown(factor)) return undefined;
    return metreOf(area, cable, factor.value);
  };
  const length = isKnown(cable.length) && cable.length.value > 0 ? cable.length : undefined;
  const range = length === undefined ? 0 : (length.high - length.low) / Math.sqrt(12) / length.value;
  const stated = length === undefined ? 0 : Math.hypot(LENGTH_PART, LENGTH_METRES / length.value);
  const warmth = isKnown(factor) ? (factor.high - factor.low) / Math.sqrt(12) / factor.value : 0;
  return {
    line: ohms(cable.line),
    cpc: core ? ohms(cable.cpc) : undefined,
    length: length?.value,
    deviation: Math.hypot(range > 0 ? range : stated, warmth, CONDUCTOR_DEVIATION),
  };
}

/** Resistance per metre at the temperature of the test, Ω/m. */
function metreOf(area: Evidence<"square-millimetre">, cable: Circuit["cable"], factor: number): number | undefined {
  const { material } = cable;
  const figure = perMetre(TERM.conductorPerMetre, area, material, reckon);
  return isKnown(figure) && figure.value > 0 ? figure.value * factor * CONDUCTOR_TOLERANCE.value : undefined;
}
