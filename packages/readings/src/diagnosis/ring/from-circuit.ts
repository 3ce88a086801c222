import {
  type Evidence,
  type Ground,
  isKnown,
  isKnownFact,
  missingOf,
  type NotKnown,
  Reckoner,
  type Unit,
  type UnknownFact,
} from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { assumptions } from "./assumptions.ts";
import {
  CPC_AGAINST_LINE,
  isMetalOfCable,
  lengthOf,
  NEUTRAL_AGAINST_LINE,
  otherSizes,
  perMetreNow,
  ratioOf,
  spread,
} from "./conductors-of-circuit.ts";
import { diagnoseRingReadings, type RingDiagnosis } from "./diagnose.ts";
import { type PointEvidence, pointsOf, readingOf } from "./points-of-circuit.ts";
import type { RingInput, RingReading, Uncertain } from "./readings.ts";

/** The readings of a ring and what is known of it, made ready, with what that rests on. */
export interface ReadRing {
  readonly input: RingInput;
  /** Names of the points, by the numbers the diagnosis uses. */
  readonly points: readonly string[];
  /** r1, rn and r2. */
  readonly ends: readonly Evidence<"ohm">[];
  /** What was read at each point. */
  readonly atPoints: readonly PointEvidence[];
  /** The readings. */
  readonly read: readonly Evidence<"ohm">[];
  /** What was taken to be so, and what was computed from tables. */
  readonly assumed: readonly Ground[];
  readonly formula: string;
}

/** Why there is nothing to say of a circuit as a ring. */
export interface NoRing {
  readonly reason: string;
  /** What would have to be read or stated. Empty where the question does not arise. */
  readonly missing: readonly (NotKnown<Unit> | UnknownFact)[];
}

/** The diagnosis of a circuit of an inspection, with what it rests on; or why there is none. */
export type CircuitRingDiagnosis =
  | (ReadRing & { readonly diagnosis: RingDiagnosis })
  | (NoRing & { readonly diagnosis: undefined });

const FORMULA =
  "every reading by nodal analysis of the ring's resistance network; likelihood by the meter's uncertainty; " +
  "ln n for each fitted size, 2 ln of the legs to choose from, −2 ln of how common the fault is";

/** Rings of more points are no ring final circuits, and would take seconds. */
const MOST_RING_POINTS = 200;

/**
 * What explains the ring readings of a circuit. Needs r1, rn and r2; cross-connected readings at the points are what
 * tells most faults and their places. Sizes, material, length and temperature sharpen it where they are known.
 */
export function diagnoseRing(circuit: Circuit, installation: Installation): CircuitRingDiagnosis {
  const ring = readRing(circuit, installation);
  if ("reason" in ring) return { ...ring, diagnosis: undefined };
  return { ...ring, diagnosis: diagnoseRingReadings(ring.input) };
}

/** What is known of a circuit as a ring; or why nothing can be said of it. */
export function readRing(circuit: Circuit, installation: Installation): ReadRing | NoRing {
  const { shape, readings, cable } = circuit;
  if (isKnownFact(shape) && shape.word !== "ring") return { reason: "not a ring final circuit", missing: [] };
  const ends = [readings.r1, readings.rn, readings.r2];
  const [r1, rn, r2] = ends.map(readingOf);
  const points = pointsOf(circuit);
  if (points.length > MOST_RING_POINTS) {
    return { reason: `a ring of more than ${MOST_RING_POINTS} points is not looked at`, missing: [] };
  }
  if (r1 === undefined || rn === undefined || r2 === undefined) {
    const missing = ends.filter((end) => !isKnown(end)).flatMap((end) => missingOf(end));
    const unasked = isKnownFact(shape) ? [] : missingOf(shape as unknown as Ground);
    return {
      reason: "the end-to-end readings r1, rn and r2 are needed to say anything of a ring",
      missing: [...missing, ...unasked],
    };
  }
  const reckon = new Reckoner(true);
  const line = perMetreNow(cable.line, circuit, reckon);
  const neutralStated = isKnown(cable.neutral);
  const against = (area: typeof cable.line, relative: number) =>
    ratioOf(area, cable.line, cable.material, reckon, relative);
  const neutral = against(neutralStated ? cable.neutral : cable.line, NEUTRAL_AGAINST_LINE);
  const written = isMetalOfCable(circuit) ? against(cable.cpc, CPC_AGAINST_LINE) : undefined;
  if (written !== undefined && areExchanged(r1, rn, r2, written))
    return { reason: "r1 and r2 read as if they had changed places in the schedule", missing: [] };
  const length = lengthOf(cable.length);
  const input: RingInput = {
    r1,
    rn,
    r2,
    points,
    orderKnown: true,
    otherRing: hasOtherRing(circuit, installation),
    neutralRatio: neutral ?? { value: 1, deviation: NEUTRAL_AGAINST_LINE },
    ...(isKnown(line) ? { linePerMetre: spread(line) } : {}),
    ...(written === undefined ? {} : { cpcRatio: written, cpcSizes: otherSizes(circuit, reckon) }),
    ...(length === undefined ? {} : { length }),
  };
  const read = [...ends, ...[...readings.crossLineNeutral, ...readings.crossLineCpc].map(({ reading }) => reading)];
  return {
    input,
    points: points.map(({ name }) => name),
    ends,
    atPoints: points.map(({ evidence }) => evidence),
    read,
    assumed: assumptions(circuit, line, neutralStated, read),
    formula: FORMULA,
  };
}

/** Whether the board has another ring that is not known to be continuous, and whose ends this one's may be. */
function hasOtherRing({ path }: Circuit, { circuits }: Installation): boolean {
  return circuits.some(
    (other) =>
      other.path[1] === path[1] &&
      other.path[3] !== path[3] &&
      isKnownFact(other.shape) &&
      other.shape.word === "ring" &&
      [other.readings.r1, other.readings.rn, other.readings.r2].every((end) => readingOf(end)?.bound !== "exact"),
  );
}

/** Readings that are alike, as the logarithm of their ratio; conductors of nearly one size cannot be told apart by it. */
const ALIKE = 0.06;
const OF_TWO_SIZES = 0.2;

/** Whether r1 is what r2 should be, by the sizes, and r2 what r1 should be, by rn. */
function areExchanged(r1: RingReading, rn: RingReading, r2: RingReading, written: Uncertain): boolean {
  if ([r1, rn, r2].some(({ bound, shown }) => bound !== "exact" || !(shown > 0))) return false;
  const off = (a: number, b: number) => Math.abs(Math.log(a / b));
  return (
    off(written.value, 1) > OF_TWO_SIZES &&
    off(r1.shown / r2.shown, written.value) < ALIKE &&
    off(r2.shown, rn.shown) < ALIKE
  );
}
