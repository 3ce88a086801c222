import {
  type Accuracy,
  type Evidence,
  type Fact,
  fact,
  factNotKnown,
  type Matter,
  measured,
  notKnown,
  type Path,
  parseAccuracy,
  parseWritten,
  seen,
  seenBetween,
  type Taken,
  type Term,
  type Unit,
  type Written,
} from "@good-grounds/core";
import type { Instrument } from "../schema/instrument.ts";
import type { InstrumentRange } from "../schema/instrument-ranges.ts";

type Silence = "limited" | "not-verified" | "not-applicable";
type NotStated = { readonly notKnown: Silence; readonly reason: string };
type StatedQuantity = string | { readonly from: string; readonly to: string } | NotStated;
type Shown = {
  readonly shown: string;
  readonly at?: string | undefined;
  readonly by?: string | undefined;
  readonly with?: string | undefined;
  readonly method?: string | undefined;
  readonly note?: string | undefined;
};
type ReadingEntry = Shown | { readonly notTaken: Silence; readonly reason: string };

/** The words an entry may hold, without the forms that say it is not known. */
type WordOf<T> = Extract<T, string | boolean>;

/** Makes evidence leaves of what a file states. Instruments are looked up once per file. */
export class Leaves {
  readonly #accuracies = new Map<string, Accuracy | null>();
  readonly #instruments: ReadonlyMap<string, Instrument>;
  readonly #only: Instrument | undefined;

  constructor(instruments: readonly Instrument[]) {
    this.#instruments = new Map(instruments.flatMap((one) => (one.id === undefined ? [] : [[one.id, one] as const])));
    this.#only = instruments.length === 1 ? instruments[0] : undefined;
  }

  /** A quantity as stated: a value, a range, or not known. */
  quantity<U extends Unit>(term: Term<U>, entry: StatedQuantity | undefined, path: Path): Evidence<U> {
    if (entry === undefined) return notKnown(term, path);
    if (typeof entry === "string") return seen(term, must(entry, term.unit), path);
    if ("notKnown" in entry) return notKnown(term, path, entry.notKnown, entry.reason);
    const from = must(entry.from, term.unit);
    const to = must(entry.to, term.unit);
    if (from.value > to.value) {
      return seenBetween(term, to.value, from.value, `${entry.to} to ${entry.from}`, path);
    }
    return seenBetween(term, from.value, to.value, `${entry.from} to ${entry.to}`, path);
  }

  /**
   * A reading, its band from the accuracy of the instrument it names. A job with a single instrument need not name it;
   * with several, a reading that names none is taken as shown.
   */
  reading<U extends Unit>(
    term: Term<U>,
    entry: ReadingEntry | undefined,
    range: InstrumentRange,
    path: Path,
  ): Evidence<U> {
    if (entry === undefined) return notKnown(term, path);
    if ("notTaken" in entry) return notKnown(term, path, entry.notTaken, entry.reason);
    const instrument = entry.with ?? this.#only?.id;
    const used = entry.with === undefined ? this.#only : this.#instruments.get(entry.with);
    const taken: Taken = Object.freeze({
      ...(entry.at === undefined ? {} : { at: entry.at }),
      ...(entry.by === undefined ? {} : { by: entry.by }),
      ...(instrument === undefined ? {} : { instrument }),
      ...(entry.method === undefined ? {} : { method: entry.method }),
      ...(entry.note === undefined ? {} : { note: entry.note }),
    });
    return measured(term, must(entry.shown, term.unit), path, this.#accuracy(used, range), taken);
  }

  /** A fact as stated: a word, or not known. */
  fact<T extends string | boolean | NotStated | undefined>(about: Matter, entry: T, path: Path): Fact<WordOf<T>> {
    if (entry === undefined) return factNotKnown(about, path);
    if (typeof entry === "object") return factNotKnown(about, path, entry.notKnown, entry.reason);
    return fact(about, entry as WordOf<T>, path);
  }

  #accuracy(instrument: Instrument | undefined, range: InstrumentRange): Accuracy | null {
    if (instrument === undefined) return null;
    const key = `${instrument.id} ${range}`;
    const held = this.#accuracies.get(key);
    if (held !== undefined) return held;
    const text = instrument.accuracy?.[range];
    const accuracy = text === undefined ? null : (parseAccuracy(text) ?? null);
    this.#accuracies.set(key, accuracy);
    return accuracy;
  }
}

/** The schema has let the text through, so it is a written quantity; anything else is a fault of this program. */
function must<U extends Unit>(text: string, unit: U): Written<U> {
  const result = parseWritten(text, unit);
  if ("code" in result) throw new Error(`a validated quantity does not parse: ${text} as ${unit}`);
  return result;
}
