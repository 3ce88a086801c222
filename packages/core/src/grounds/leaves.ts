import type { Path } from "../issue/issue.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Unit } from "../quantity/unit.ts";
import type { Written } from "../quantity/written.ts";
import type { Matter, Term } from "../terms/term.ts";
import type { Accuracy } from "./accuracy.ts";
import { bandOf, errorsOf } from "./errors.ts";
import type {
  Assumed,
  Expected,
  KnownFact,
  Measured,
  NotKnown,
  Published,
  Seen,
  Silence,
  Source,
  Taken,
  UnknownFact,
} from "./evidence.ts";

const NOTHING: readonly [] = Object.freeze([]);

/** A quantity seen on site or stated in the file. */
export function seen<U extends Unit>(term: Term<U>, written: Written<U>, path: Path): Seen<U> {
  const { value, text } = written;
  const [low, high] = bandOf(written, []);
  return Object.freeze({ kind: "seen", term, value, low, high, detail: Object.freeze({ path, text }), from: NOTHING });
}

/** A quantity stated as a range: it lies somewhere between the two, and its value for comparisons as read is the middle. */
export function seenBetween<U extends Unit>(
  term: Term<U>,
  low: Quantity<U>,
  high: Quantity<U>,
  text: string,
  path: Path,
): Seen<U> {
  if (low > high) throw new RangeError(`${term.name}: the range ${text} runs backwards`);
  const value = ((low + high) / 2) as Quantity<U>;
  return Object.freeze({ kind: "seen", term, value, low, high, detail: Object.freeze({ path, text }), from: NOTHING });
}

/** A quantity stated with its doubt, "0.71 ± 0.02 Ω": the value as written, and so much either way. */
export function seenWithin<U extends Unit>(
  term: Term<U>,
  written: Written<U>,
  either: number,
  text: string,
  path: Path,
): Seen<U> {
  const { value } = written;
  const floor = value >= 0 ? 0 : Number.NEGATIVE_INFINITY;
  const low = Math.max(floor, value - either) as Quantity<U>;
  const high = (value + either) as Quantity<U>;
  return Object.freeze({ kind: "seen", term, value, low, high, detail: Object.freeze({ path, text }), from: NOTHING });
}

/** An instrument reading with its errors by cause: from the instrument's accuracy where that is stated, else a usual one's. */
export function measured<U extends Unit>(
  term: Term<U>,
  written: Written<U>,
  path: Path,
  accuracy: Accuracy | null = null,
  taken: Taken = {},
): Measured<U> {
  const { grade, errors } = errorsOf(term, written, accuracy, taken);
  const [low, high] = bandOf(written, errors);
  return Object.freeze({
    kind: "measured",
    term,
    value: written.value,
    low,
    high,
    detail: Object.freeze({
      path,
      text: written.text,
      resolution: written.resolution,
      bound: written.bound,
      accuracy: accuracy === null ? null : accuracy.text,
      grade,
      errors,
      taken,
    }),
    from: NOTHING,
  });
}

/** A figure of a published table. */
export function published<U extends Unit>(term: Term<U>, value: number, source: Source, row: string): Published<U> {
  return publishedBetween(term, value, value, value, source, row);
}

/** A figure of a published table that leaves a range open, such as the trip band of a device. */
export function publishedBetween<U extends Unit>(
  term: Term<U>,
  value: number,
  low: number,
  high: number,
  source: Source,
  row: string,
): Published<U> {
  return Object.freeze({
    kind: "published",
    term,
    value: value as Quantity<U>,
    low: low as Quantity<U>,
    high: high as Quantity<U>,
    detail: Object.freeze({ source: Object.freeze(source), row }),
    from: NOTHING,
  });
}

/** Something taken to be so, with the reason and the band it leaves open. */
export function assumed<U extends Unit>(
  term: Term<U>,
  value: number,
  why: string,
  band: readonly [low: number, high: number] = [value, value],
  source?: Source,
): Assumed<U> {
  return Object.freeze({ kind: "assumed", ...taken(term, value, why, band, source) });
}

/** A quantity that physics bounds without a figure of the thing itself: why, and within what band it lies. */
export function expected<U extends Unit>(
  term: Term<U>,
  value: number,
  why: string,
  band: readonly [low: number, high: number] = [value, value],
  source?: Source,
): Expected<U> {
  return Object.freeze({ kind: "expected", ...taken(term, value, why, band, source) });
}

/** What every leaf that no reading or table gives carries: a value, its band, and why. */
function taken<U extends Unit>(
  term: Term<U>,
  value: number,
  why: string,
  [low, high]: readonly [low: number, high: number],
  source: Source | undefined,
) {
  return {
    term,
    value: value as Quantity<U>,
    low: low as Quantity<U>,
    high: high as Quantity<U>,
    detail: Object.freeze(source === undefined ? { why } : { why, source: Object.freeze(source) }),
    from: NOTHING,
  };
}

/** A quantity that is not known, and why. */
export function notKnown<U extends Unit>(
  term: Term<U>,
  path: Path,
  silence: Silence = "absent",
  reason = "",
): NotKnown<U> {
  const none = Number.NaN as Quantity<U>;
  return Object.freeze({
    kind: "not-known",
    term,
    value: none,
    low: none,
    high: none,
    detail: Object.freeze({ path, silence, reason }),
    from: NOTHING,
  });
}

/** A fact that is one of a few words or yes/no. */
export function fact<W extends string | boolean>(
  about: Matter,
  word: W,
  path: Path,
  text: string = String(word),
  how: KnownFact<W>["how"] = "seen",
  why?: string,
): KnownFact<W> {
  const detail = Object.freeze(why === undefined ? { path, text } : { path, text, why });
  return Object.freeze({ kind: "fact", matter: about, word, how, detail });
}

/** A fact that is not known, and why. */
export function factNotKnown(about: Matter, path: Path, silence: Silence = "absent", reason = ""): UnknownFact {
  return Object.freeze({ kind: "fact-not-known", matter: about, detail: Object.freeze({ path, silence, reason }) });
}
