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
import { assumptions, perMetreNow } from "./assumptions.ts";
import { conductorsOf } from "./conductors-of-circuit.ts";
import { diagnoseRingReadings, type RingDiagnosis } from "./diagnose.ts";
import { type PointEvidence, pointsOf, readingOf } from "./points-of-circuit.ts";
import type { RingInput } from "./readings.ts";
import { besideRows, rowsOf } from "./rows.ts";
import { seenAt } from "./seen.ts";

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
  "every reading as one way round the ring beside the other; likelihood by the meter's uncertainty; " +
  "ln n for each fitted size, 2 ln of the legs to choose from, −2 ln of how common each fault is";

/** Rings of more points are no ring final circuits, and would take seconds. */
const MOST_RING_POINTS = 200;

/**
 * What explains the ring readings of a circuit. Needs r1, rn and r2; cross-connected readings at the points are what
 * tells most faults and their places. Sizes, material, length and temperature sharpen it where they are known.
 */
export function diagnoseRing(circuit: Circuit, installation: Installation): CircuitRingDiagnosis {
  const ring = readRing(circuit, installation);
  if ("reason" in ring) return { ...ring, diagnosis: undefined };
  const others = readRings(installation).filter((one) => one.circuit.path.join() !== circuit.path.join());
  return { ...ring, diagnosis: diagnoseRingReadings(besideRows(ring.input, rowsOf(others))) };
}

/** Every ring of an installation with its readings. */
export function readRings(installation: Installation) {
  return installation.circuits.flatMap((circuit) => {
    const ring = readRing(circuit, installation);
    return "reason" in ring ? [] : [{ circuit, name: circuit.designation, ring }];
  });
}

/** What is known of a circuit as a ring; or why nothing can be said of it. */
function readRing(circuit: Circuit, installation: Installation): ReadRing | NoRing {
  const { shape, readings } = circuit;
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
  const { times, grounds } = seenAt(circuit, installation);
  const input: RingInput = {
    r1,
    rn,
    r2,
    points,
    orderKnown: true,
    otherRing: hasOtherRing(circuit, installation),
    earthedAtPoints: isKnown(readings.zs),
    ...conductorsOf(circuit),
    ...(times.size === 0 ? {} : { seen: times }),
  };
  const read = [...ends, ...[...readings.crossLineNeutral, ...readings.crossLineCpc].map(({ reading }) => reading)];
  return {
    input,
    points: points.map(({ name }) => name),
    ends,
    atPoints: points.map(({ evidence }) => evidence),
    read,
    assumed: [...assumptions(circuit, perMetreNow(circuit, new Reckoner(true)), read), ...grounds],
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
