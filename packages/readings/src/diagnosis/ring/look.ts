import type { ExpectedReading, Ground, Path } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { CLEAR, LOG_TEN, RING_LISTED } from "../installation/thresholds.ts";
import type { Asked } from "./asked.ts";
import { diagnoseRingReadings, type RingDiagnosis, type RingExplanation } from "./diagnose.ts";
import { EXPLANATIONS } from "./explanations/index.ts";
import { type ReadRing, readRings } from "./from-circuit.ts";
import type { NextReading } from "./next-reading.ts";
import type { RingRow } from "./readings.ts";
import { besideRows, rowsOf } from "./rows.ts";
import type { RingFault } from "./said.ts";
import { isPlainlySound, type SoundReading, soundReadings } from "./sound-ring.ts";

/** A reading of a ring that stands out, beside what it would be were the ring sound. */
export interface RingReadingBeside extends ExpectedReading {
  readonly asked: Asked;
  /** As the display showed it. */
  readonly shown: string;
  /** Ω. */
  readonly measured: number;
}

/** One explanation of a ring's readings. Empty faults: a sound ring. */
export interface RingStory {
  readonly faults: readonly RingFault[];
  readonly probability: number;
  /** Nothing is wrong with the ring: it is sound, has a spur, or the readings were taken wrongly. */
  readonly innocent: boolean;
  /** What the readings that stand out would be under it; without those that would be open. */
  readonly would: readonly ExpectedReading[];
}

/** One reading of a picture of the ring, Ω; infinite for open, NaN where it was not taken. */
interface Drawn {
  readonly shown: number;
  readonly expected: number;
  readonly deviation: number;
}

/** The readings of a ring final circuit and what explains them, as data. */
export interface RingLook {
  readonly circuit: Path;
  readonly designation: string;
  /** The points in their order, with their places by the leading explanation and the readings beside it. */
  readonly points: readonly {
    readonly name: string;
    readonly at: number;
    readonly lineNeutral: Drawn;
    readonly lineCpc: Drawn;
  }[];
  /** Length of the ring by the leading explanation, m. */
  readonly metres: number | undefined;
  /** Most probable first. */
  readonly stories: readonly RingStory[];
  /** How many, from the first on, cannot be told apart. */
  readonly tied: number;
  /** Whether the leading explanation accounts for the readings within their uncertainty. */
  readonly accounts: boolean;
  readonly next: NextReading | undefined;
  readonly readings: readonly RingReadingBeside[];
  /** Odds against a sound ring, as a power of ten. */
  readonly odds: number;
  /** Whether it is shown unasked: a fault leads, not spurs alone, which are permitted, and is clear of both. */
  readonly clear: boolean;
  readonly formula: string;
  readonly grounds: readonly Ground[];
}

/** Explanations less probable than this are not told. */
const TOLD = 0.01;
/** Readings shown beside what they would be. */
const MOST_READINGS = 6;
/** Readings more deviations apart than this are all alike far off. */
const FAR_APART = 20;
/**
 * Odds of a fault against a ring that is sound but for spurs, as a power of ten: three to one. See
 * outside/diagnosis/ring-alarms-results.md for what that shows and how often it is wrong.
 */
const CLEAR_OF_SPURS = 0.5;
/** Beyond this power of ten, odds say nothing more. */
const MOST_ODDS = 300;
const MIDDLE_95 = 1.96;

/**
 * Squares of the numbers of points, with a floor for each ring, that are looked at in full in one installation: the time a
 * ring takes grows with the square and more, and a file that claims many rings must not hold anyone up.
 */
const MOST_WORK = 41_000;
const LEAST_WORK = 600;
/** Passing a sound ring over takes a twentieth of that and less. */
const PASSING = 20;

/** Every ring of an installation with the readings for it, in the order of the circuits; some fifty of usual size. */
export function lookAtRings(installation: Installation): readonly RingLook[] {
  return looks(installation, () => false);
}

/**
 * The rings of an installation whose readings are better explained by something other than a sound ring, from odds of
 * 30 to 1 on, worst first. Rings that are plainly sound are passed over.
 */
export function diagnoseRings(installation: Installation): readonly RingLook[] {
  return looks(installation, ({ input }) => isPlainlySound(input))
    .filter(({ odds, stories }) => odds >= RING_LISTED && (stories[0]?.faults.length ?? 0) > 0)
    .sort((a, b) => Number(b.clear) - Number(a.clear) || b.odds - a.odds);
}

function looks(installation: Installation, passedOver: (ring: ReadRing) => boolean): readonly RingLook[] {
  const found: RingLook[] = [];
  const rings = readRings(installation);
  const rows = rowsOf(rings);
  let left = MOST_WORK;
  for (const { circuit, ring } of rings) {
    const work = ring.points.length ** 2 + LEAST_WORK;
    const passed = passedOver(ring);
    left -= passed ? work / PASSING : work;
    if (left < 0) break;
    if (!passed) found.push(lookOf(circuit, ring, rows));
  }
  return found;
}

function lookOf({ path, designation }: Circuit, ring: ReadRing, rows: readonly RingRow[]): RingLook {
  const diagnosis = diagnoseRingReadings(besideRows(ring.input, rows));
  const { explanations, leading, accounts, next } = diagnosis;
  const [first] = explanations as [RingExplanation];
  const beside = standingOut(ring, first);
  const stories = explanations.filter(({ probability }, i) => i === 0 || probability >= TOLD || i < leading);
  return {
    circuit: path,
    designation,
    points: drawnPoints(ring, first),
    metres: first.metres,
    stories: stories.map((one) => ({
      faults: one.faults,
      probability: one.probability,
      innocent: one.faults.every(({ kind }) => INNOCENT.has(kind)),
      would: beside.flatMap(({ at, reading }) => wouldBe(one, at, reading.path)),
    })),
    tied: Math.min(leading, stories.length),
    accounts,
    next,
    readings: beside.map(({ reading }) => reading),
    ...alarmOf(diagnosis),
    formula: ring.formula,
    grounds: [...ring.read, ...ring.assumed],
  };
}

const INNOCENT: ReadonlySet<string> = new Set(EXPLANATIONS.flatMap(({ id, innocent }) => (innocent ? [id] : [])));
/** What is told where it is asked for and raises no alarm: a spur is permitted, a length is a guess. */
const NO_ALARM: ReadonlySet<string> = new Set(["spur", "other-length"]);

/** Odds against a sound ring, as a power of ten, and whether they are such that the ring is shown unasked. */
export function alarmOf({ explanations, sound, permitted }: RingDiagnosis) {
  const odds = oddsAgainst(sound);
  const isFault = explanations[0]?.faults.some(({ kind }) => !NO_ALARM.has(kind)) ?? false;
  return { odds, clear: isFault && odds >= CLEAR && oddsAgainst(permitted) >= CLEAR_OF_SPURS };
}

function oddsAgainst(probability: number): number {
  if (probability <= 0) return MOST_ODDS;
  const others = Math.max(1 - probability, Number.MIN_VALUE);
  return Math.min(MOST_ODDS, (Math.log(others) - Math.log(probability)) / LOG_TEN);
}

/** The readings that stand out most from a sound ring, in the order of the test. */
function standingOut({ input, ends, atPoints }: ReadRing, { readings }: RingExplanation) {
  const sound = soundReadings(input);
  const found = readings
    .flatMap(({ asked }, at) => {
      const evidence =
        asked.point < 0
          ? ends[END.indexOf(asked.conductor ?? "line")]
          : atPoints[asked.point]?.[asked.pair === "line-neutral" ? "lineNeutral" : "lineCpc"];
      const one = sound[at];
      if (one === undefined || evidence?.kind !== "measured") return [];
      return [{ at, apart: one.apart, reading: beside(asked, one, evidence.detail, evidence.value) }];
    })
    .sort((a, b) => b.apart - a.apart);
  // What one reading that is far off pulls the expectation of others by is not worth a line.
  const least = Math.max(MIDDLE_95, Math.min(FAR_APART, found[0]?.apart ?? 0) / 2);
  return found.filter(({ apart }, i) => i === 0 || (i < MOST_READINGS && apart > least)).sort((a, b) => a.at - b.at);
}

const END = ["line", "neutral", "cpc"];

function beside(
  asked: Asked,
  { value, low, high }: SoundReading,
  { path, text }: { readonly path: Path; readonly text: string },
  measured: number,
): RingReadingBeside {
  return { asked, path, shown: text, measured, value, low, high };
}

function wouldBe({ readings }: RingExplanation, at: number, path: Path): readonly ExpectedReading[] {
  const one = readings[at];
  if (one === undefined || !Number.isFinite(one.expected)) return [];
  const half = MIDDLE_95 * one.deviation;
  return [{ path, value: one.expected, low: Math.max(0, one.expected - half), high: one.expected + half }];
}

const NOT_TAKEN: Drawn = Object.freeze({ shown: Number.NaN, expected: Number.NaN, deviation: Number.NaN });

function drawnPoints({ points }: ReadRing, { readings, pointsAt }: RingExplanation): RingLook["points"] {
  const drawn = new Map(
    readings.map(({ asked, shown, open, expected, deviation }): [string, Drawn] => [
      `${asked.pair} ${asked.point}`,
      { shown: open ? Number.POSITIVE_INFINITY : shown, expected, deviation },
    ]),
  );
  return points.map((name, i) => ({
    name,
    at: pointsAt[i] ?? 0,
    lineNeutral: drawn.get(`line-neutral ${i}`) ?? NOT_TAKEN,
    lineCpc: drawn.get(`line-cpc ${i}`) ?? NOT_TAKEN,
  }));
}
