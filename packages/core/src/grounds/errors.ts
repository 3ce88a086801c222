import type { ErrorKind } from "../conformity.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Unit } from "../quantity/unit.ts";
import type { Written } from "../quantity/written.ts";
import { rangeOf } from "../terms/range-of-term.ts";
import type { Term } from "../terms/term.ts";
import type { InstrumentRange } from "../vocabulary/instrument.ts";
import type { Accuracy } from "./accuracy.ts";
import type { Source, Taken } from "./evidence.ts";

/**
 * What the errors of a reading rest on. `stated`: the accuracy of the instrument on that range. `usual`: nothing is
 * stated, and what usual instruments are out by is taken. `digits`: neither; only what was written counts.
 */
export type ErrorGrade = "stated" | "usual" | "digits";

/** One cause of error of a reading, in the unit of the reading. */
export interface ReadingError {
  readonly kind: ErrorKind;
  /** Readings with the same cause carry the same error, in proportion; null where it is this reading's own. */
  readonly cause: string | null;
  /** How far the true value may lie below the reading, and above it. */
  readonly below: number;
  readonly above: number;
  /** Standard deviation. */
  readonly standard: number;
}

/** Standard deviation of a rectangular error that reaches one either way: only its limits are known (GUM 4.3.7). */
export const RECTANGULAR = 1 / Math.sqrt(3);

/**
 * How an instrument's percentage splits, as a part of its variance: half of it is taken to be the same part of every
 * reading on one range, half to be new with every reading. Makers do not say; neither end is taken for granted.
 */
export const COMMON_PART = 0.5;

/** What nulling the leads may leave, or what creeps in until the next nulling, Ω either way, where nothing was recorded. */
export const LEADS_LEFT = 0.02;

/** What the contact of probes and plugs may add to a reading, Ω. */
const CONTACT: Readonly<Partial<Record<InstrumentRange, number>>> = Object.freeze({ continuity: 0.01, loop: 0.02 });

interface Usual extends Pick<Accuracy, "ofReading" | "digits"> {
  readonly source: Source;
}

const PRACTICE: Source = Object.freeze({
  work: "experience of installation testers",
  edition: "none",
  basis: "common-practice",
});

const usual = (ofReading: number, digits: number): Usual => Object.freeze({ ofReading, digits, source: PRACTICE });

/**
 * What usual instruments are out by, of the reading and in digits, taken where no accuracy is stated. The ceiling of the
 * instrument standard is not taken: ±30 % bounds the worst instrument at the end of its range, no instrument that is
 * checked from time to time comes near it, and it would explain away every fault and call every pass in doubt. A
 * temperature has none: what a thermometer is out by is less than what the conductor differs from where it is held.
 */
export const USUAL_ACCURACY: Readonly<Record<Exclude<InstrumentRange, "temperature">, Usual>> = Object.freeze({
  continuity: usual(0.02, 3),
  insulation: usual(0.05, 3),
  loop: usual(0.05, 5),
  "fault-current": usual(0.1, 5),
  "rcd-time": usual(0.03, 2),
  electrode: usual(0.05, 5),
  voltage: usual(0.01, 2),
});

/** The errors of one reading, and what they rest on. */
export interface ReadingErrors {
  readonly grade: ErrorGrade;
  readonly errors: readonly ReadingError[];
}

const EXACT: ReadingErrors = Object.freeze({ grade: "digits", errors: Object.freeze([]) });

/**
 * The errors of a reading by cause; band, standard deviation and covariance of readings all come from these.
 *
 * An accuracy of ±(p + n digits) is one rectangular error with the limit a = p·v + n·q; of its variance a²/3 the common
 * part of (p·v)²/3 belongs to the gain of the instrument on that range, the rest to the reading, and their limits add up
 * to a. Where the accuracy names no digits, the rounding to q as written comes on top. On the continuity range comes what
 * nulling left of the leads; there and on the loop range what contacts add.
 */
export function errorsOf(
  term: Term,
  { value, resolution, bound }: Written<Unit>,
  accuracy: Pick<Accuracy, "ofReading" | "digits"> | null,
  taken: Taken,
): ReadingErrors {
  const range = rangeOf(term);
  const used = accuracy ?? (range === undefined || range === "temperature" ? undefined : USUAL_ACCURACY[range]);
  if (used === undefined && range === "temperature") return EXACT;
  const errors: ReadingError[] = [];
  const { ofReading, digits } = used ?? { ofReading: 0, digits: 0 };
  const part = ofReading * Math.abs(value);
  const limit = part + digits * resolution;
  const gain = Math.sqrt(COMMON_PART) * part;
  const meter = taken.instrument ?? "";
  if (part > 0) add(errors, "gain", `gain ${meter} ${range ?? term.id}`, COMMON_PART * part, gain);
  if (limit > 0) {
    const rest = Math.sqrt(Math.max(0, limit * limit - gain * gain));
    add(errors, "reading", null, limit - COMMON_PART * part, rest);
  }
  if (digits === 0) add(errors, "resolution", null, resolution / 2, resolution / 2);
  if (range === "continuity" && bound === "exact") {
    const half = taken.leads?.half ?? LEADS_LEFT;
    add(errors, "leads", `leads ${meter} ${taken.leads?.since ?? ""}`, half, half);
  }
  const contact = range === undefined ? undefined : CONTACT[range];
  if (contact !== undefined) {
    errors.push({ kind: "contact", cause: null, below: contact, above: 0, standard: contact * RECTANGULAR });
  }
  return { grade: accuracy !== null ? "stated" : used !== undefined ? "usual" : "digits", errors };
}

function add(errors: ReadingError[], kind: ErrorKind, cause: string | null, limit: number, either: number) {
  errors.push({ kind, cause, below: limit, above: limit, standard: either * RECTANGULAR });
}

/**
 * The band of a written value by its errors at their worst. A display at the end of its range (">999 MΩ") is open on
 * that side. Quantities that cannot be negative are not given a negative band, since every reading of this project but
 * temperature is a magnitude.
 */
export function bandOf<U extends Unit>(
  { value, bound }: Written<U>,
  errors: readonly ReadingError[],
): readonly [low: Quantity<U>, high: Quantity<U>] {
  let below = 0;
  let above = 0;
  for (const error of errors) {
    below += error.below;
    above += error.above;
  }
  const floor = value >= 0 ? 0 : Number.NEGATIVE_INFINITY;
  const low = bound === "below" ? floor : Math.max(floor, value - below);
  const high = bound === "above" ? Number.POSITIVE_INFINITY : value + above;
  return [low as Quantity<U>, high as Quantity<U>];
}
