import { CONDUCTOR_TOLERANCE, perMetre, testFactor } from "@good-grounds/computations";
import {
  assumed,
  type Evidence,
  type Fact,
  fact,
  type Ground,
  isKnown,
  isKnownFact,
  matter,
  missingOf,
  type NotKnown,
  parseAccuracy,
  Reckoner,
  TERM,
  type Unit,
  type UnknownFact,
} from "@good-grounds/core";
import { type Circuit, type Installation, MATTER } from "@good-grounds/inspection";
import { diagnoseRingReadings, type RingDiagnosis } from "./diagnose.ts";
import type { RingInput, RingPointReadings, RingReading, Uncertain } from "./readings.ts";

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

/** The cross-connected readings of one point; what was not taken is left out. */
interface PointEvidence {
  readonly lineNeutral?: Evidence<"ohm">;
  readonly lineCpc?: Evidence<"ohm">;
}

const FORMULA =
  "every reading by nodal analysis of the ring's resistance network; likelihood by the meter's uncertainty; " +
  "ln n for each fitted size, 2 ln of the legs to choose from, −2 ln of how common the fault is";

/** Conductors of one cable against each other, relative: a habit of the trade's cables, as CONDUCTOR_TOLERANCE is. */
const NEUTRAL_AGAINST_LINE = 0.02;
const CPC_AGAINST_LINE = 0.025;
/** A length stated as one figure is paced or scaled off. */
const LENGTH_AS_STATED = 0.03;

/** Rings of more points are no ring final circuits, and would take seconds. */
const MOST_RING_POINTS = 200;

const ORDER = matter("ring-order", "the points are listed in their order round the ring");
const NEUTRAL = matter("ring-neutral-size", "the neutral conductor of the ring is of the size of the line conductor");

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

/** What no display of a continuity range shows, Ω. */
const ABSURD = 1e9;

function readingOf(evidence: Evidence<"ohm">): RingReading | undefined {
  if (evidence.kind !== "measured") return undefined;
  const { resolution, bound, accuracy } = evidence.detail;
  if (!(evidence.value >= 0 && evidence.value < ABSURD && resolution > 0 && resolution < ABSURD)) return undefined;
  return {
    shown: evidence.value,
    resolution,
    bound,
    accuracy: accuracy === null ? null : (parseAccuracy(accuracy) ?? null),
  };
}

/** Points by their names, in the order in which they are listed; a name that stands twice in one list is two points. */
function pointsOf({ readings }: Circuit): readonly (RingPointReadings & { readonly evidence: PointEvidence })[] {
  interface Entry {
    readonly name: string;
    lineNeutral?: RingReading;
    lineCpc?: RingReading;
    readonly evidence: { lineNeutral?: Evidence<"ohm">; lineCpc?: Evidence<"ohm"> };
  }
  const found = new Map<string, Entry>();
  const add = (listed: typeof readings.crossLineNeutral, key: "lineNeutral" | "lineCpc") => {
    const seen = new Map<string, number>();
    for (const { point, reading } of listed) {
      const times = (seen.get(point) ?? 0) + 1;
      seen.set(point, times);
      const id = `${times} ${point}`;
      const entry = found.get(id) ?? { name: point, evidence: {} };
      const made = readingOf(reading);
      if (made !== undefined) {
        entry[key] = made;
        entry.evidence[key] = reading;
      }
      found.set(id, entry);
    }
  };
  add(readings.crossLineNeutral, "lineNeutral");
  add(readings.crossLineCpc, "lineCpc");
  return [...found.values()];
}

/** Ω/m at the temperature of the test, with the tolerance of real conductors. */
function perMetreNow(
  area: Evidence<"square-millimetre">,
  circuit: Circuit,
  reckon: Reckoner,
): Evidence<"ohm-per-metre"> {
  const at20 = perMetre(TERM.conductorPerMetre, area, circuit.cable.material, reckon);
  const atTest = reckon.product(TERM.conductorPerMetre, at20, testFactor(circuit.readings.temperature));
  return reckon.product(TERM.conductorPerMetre, atTest, CONDUCTOR_TOLERANCE);
}

/** Resistance of a conductor over that of the line conductor, by their sizes. */
function ratioOf(
  area: Evidence<"square-millimetre">,
  ofLine: Evidence<"square-millimetre">,
  stated: Circuit["cable"]["material"],
  reckon: Reckoner,
  relative: number,
): Uncertain | undefined {
  // Of one metal, whichever it is, sizes stand in nearly the same ratio.
  const material = isKnownFact(stated) ? stated : AS_COPPER;
  const other = perMetre(TERM.conductorPerMetre, area, material, reckon);
  const line = perMetre(TERM.conductorPerMetre, ofLine, material, reckon);
  if (!isKnown(other) || !isKnown(line)) return undefined;
  const value = other.value / line.value;
  return { value, deviation: value * relative };
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

/** Sizes a protective conductor of a ring may have in truth, mm². */
const SIZES = [1, 1.5, 2.5, 4, 6];

/** Ratios of the other sizes that the protective conductor may have; it is never larger than the line conductor. */
function otherSizes({ cable }: Circuit, reckon: Reckoner): NonNullable<RingInput["cpcSizes"]> {
  const { line, cpc, material } = cable;
  if (!isKnown(line) || !isKnown(cpc)) return [];
  return SIZES.flatMap((size) => {
    if (size === cpc.value || size > line.value) return [];
    const ratio = ratioOf(sizeOf(size), line, material, reckon, CPC_AGAINST_LINE);
    return ratio === undefined ? [] : [{ size, ratio }];
  });
}

function sizeOf(size: number): Evidence<"square-millimetre"> {
  return assumed(TERM.cpcArea, size, "a size the protective conductor may have in truth");
}

/** Whether the protective conductor is a conductor of the table, not armour or conduit. */
function isMetalOfCable({ cable: { cpcArrangement } }: Circuit): boolean {
  return !isKnownFact(cpcArrangement) || cpcArrangement.word === "in-cable" || cpcArrangement.word === "separate";
}

function lengthOf(length: Evidence<"metre">): Uncertain | undefined {
  if (!isKnown(length) || !(length.value > 0)) return undefined;
  const { value, deviation } = spread(length);
  return { value, deviation: Math.max(deviation, value * LENGTH_AS_STATED) };
}

/** A band as a rectangular distribution. */
function spread({ low, high }: Evidence<Unit>): Uncertain {
  return { value: (low + high) / 2, deviation: (high - low) / Math.sqrt(12) };
}

function assumptions(
  { readings, cable }: Circuit,
  line: Evidence<"ohm-per-metre">,
  neutralStated: boolean,
  read: readonly Evidence<"ohm">[],
): readonly Ground[] {
  const found: Ground[] = [line];
  if (readings.crossLineNeutral.length + readings.crossLineCpc.length > 0) found.push(LISTED_IN_ORDER);
  if (!neutralStated) found.push(NEUTRAL_AS_LINE);
  if (!isKnownFact(cable.material) && isKnown(cable.line)) found.push(AS_COPPER);
  if (isKnown(cable.length)) found.push(cable.length);
  if (read.some((one) => one.kind === "measured" && one.detail.accuracy === null)) found.push(NO_ACCURACY);
  return found;
}

const LISTED_IN_ORDER: Fact<boolean> = fact<boolean>(
  ORDER,
  true,
  [],
  "true",
  "assumed",
  "the file does not say otherwise; distances between the points are left open",
);
const NEUTRAL_AS_LINE: Fact<boolean> = fact<boolean>(
  NEUTRAL,
  true,
  [],
  "true",
  "assumed",
  "line and neutral of one cable are of one size",
);
const AS_COPPER: Fact<"copper"> = fact<"copper">(
  MATTER.material,
  "copper",
  [],
  "copper",
  "assumed",
  "line, neutral and protective conductor of a ring are of one metal; the ratio of their sizes is taken as that of copper",
);
const NO_ACCURACY = assumed(
  TERM.operatingUncertainty,
  1,
  "accuracy of the instrument not stated: an error common to all readings up to the greatest its standard allows, and " +
    "of each reading 2 % and 3 digits by the habit of such instruments",
  [0.7, 1.3],
  { work: "BS EN 61557-4", edition: "all", basis: "published" },
);
