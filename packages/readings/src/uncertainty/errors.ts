import {
  type Assumed,
  type ConformityNote,
  type ErrorKind,
  type Expected,
  type Measured,
  type Path,
  type Published,
  RECTANGULAR,
  rangeOf,
  type Seen,
  type Term,
  type Unit,
} from "@good-grounds/core";

/** A cause of doubt met in a comparison. Values it acts on move together. */
export interface Cause {
  readonly kind: ErrorKind;
  readonly term: Term;
  readonly place: Path | null;
  readonly instrument: string | null;
  values: number;
}

/** A value as the sum of its expectation and independent errors: positions in the list of causes, standard deviations. */
export interface Spread {
  readonly expected: number;
  readonly causes: readonly number[];
  readonly deviations: readonly number[];
  /** 1 or −1 where the value may be any amount higher or lower than expected. */
  readonly open: number;
}

type Leaf = Seen<Unit> | Measured<Unit> | Published<Unit> | Expected<Unit> | Assumed<Unit>;

/** The errors of the leaves of one comparison, by cause: those a reading carries, and one for a value known as a range. */
export class Errors {
  readonly causes: Cause[] = [];
  readonly notes = new Set<ConformityNote>();
  readonly #numbers = new Map<unknown, number>();

  ofLeaf(leaf: Leaf): Spread {
    if (leaf.kind === "measured") return this.#ofReading(leaf);
    return this.ofRange(leaf, leaf.low, leaf.high, leaf.value, leaf.term, placeOf(leaf));
  }

  /** A value between two limits, all alike; `owner` tells it from others. */
  ofRange(owner: unknown, low: number, high: number, value: number, term: Term, place: Path | null): Spread {
    if (low === high) return { expected: value, causes: [], deviations: [], open: 0 };
    this.notes.add(Number.isFinite(low) && Number.isFinite(high) ? "ranges" : "open-ended");
    if (!Number.isFinite(high)) return { expected: low, causes: [], deviations: [], open: 1 };
    if (!Number.isFinite(low)) return { expected: high, causes: [], deviations: [], open: -1 };
    const cause = this.#cause(owner, "range", term, place, null);
    return { expected: (low + high) / 2, causes: [cause], deviations: [((high - low) / 2) * RECTANGULAR], open: 0 };
  }

  #ofReading(leaf: Measured<Unit>): Spread {
    const { value, term, detail } = leaf;
    const { bound, grade, taken, path } = detail;
    const instrument = taken.instrument ?? null;
    const causes: number[] = [];
    const deviations: number[] = [];
    for (const error of detail.errors) {
      if (!(error.standard > 0)) continue;
      causes.push(this.#cause(error.cause ?? error, error.kind, term, path, instrument));
      deviations.push(error.standard);
    }
    if (grade === "usual") this.notes.add("accuracy-not-stated");
    if (grade === "digits") this.notes.add("no-ceiling");
    if (rangeOf(term) === "continuity" && bound === "exact" && taken.leads?.half === undefined)
      this.notes.add("leads-assumed");
    if (bound !== "exact") this.notes.add("open-ended");
    return { expected: value, causes, deviations, open: bound === "above" ? 1 : bound === "below" ? -1 : 0 };
  }

  #cause(owner: unknown, kind: ErrorKind, term: Term, place: Path | null, instrument: string | null): number {
    const held = this.#numbers.get(owner);
    if (held !== undefined) {
      (this.causes[held] as Cause).values += 1;
      return held;
    }
    this.#numbers.set(owner, this.causes.length);
    return this.causes.push({ kind, term, place, instrument, values: 1 }) - 1;
  }
}

function placeOf(leaf: Exclude<Leaf, Measured<Unit>>): Path | null {
  return leaf.kind === "seen" ? leaf.detail.path : null;
}
