import {
  type Accuracy,
  type Assumed,
  type ConformityNote,
  type ErrorKind,
  type Expected,
  isKnown,
  type Measured,
  type Path,
  type Published,
  parseAccuracy,
  type Seen,
  TERM,
  type Term,
  type Unit,
} from "@good-grounds/core";
import { operatingUncertainty } from "@good-grounds/tables";
import type { InstrumentTable } from "./instruments.ts";
import { CEILING_OF, rangeOf } from "./range-of-term.ts";

/** Standard deviation of a rectangular error that reaches one either way. */
const RECTANGULAR = 1 / Math.sqrt(3);

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

/**
 * The errors of the leaves of one comparison, by cause. Every error is taken as rectangular (GUM 4.3.7: only limits are
 * known). A reading v with ±(p + n digits) of resolution q has the limits a = p·v + n·q; of its variance a²/3 the common
 * part of (p·v)²/3 belongs to the instrument's gain on that range, the rest to the reading. The rounding to q as
 * written, and on the continuity range what nulling left of the leads, come on top.
 */
export class Errors {
  readonly causes: Cause[] = [];
  readonly notes = new Set<ConformityNote>();
  readonly #numbers = new Map<unknown, number>();
  readonly #table: InstrumentTable;

  constructor(table: InstrumentTable) {
    this.#table = table;
  }

  ofLeaf(leaf: Leaf): Spread {
    if (leaf.kind === "measured") return this.#ofReading(leaf);
    // The ceiling some checks multiply a reading with, and its last digit, are errors of the reading here, see below.
    if (leaf.term === TERM.operatingUncertainty || leaf.term === TERM.lastDigit)
      return { expected: leaf.value, causes: [], deviations: [], open: 0 };
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
    const { resolution, bound, taken, path } = detail;
    const causes: number[] = [];
    const deviations: number[] = [];
    const instrument = taken.instrument ?? null;
    const add = (owner: unknown, kind: ErrorKind, deviation: number) => {
      if (!(deviation > 0)) return;
      causes.push(this.#cause(owner, kind, term, path, instrument));
      deviations.push(deviation);
    };
    const range = rangeOf(term);
    const { ofReading, digits } = this.#accuracy(leaf);
    const gain = ofReading * Math.abs(value);
    const shared = this.#table.commonPart * gain * gain;
    add(`gain ${instrument ?? ""} ${range ?? term.id}`, "gain", Math.sqrt(shared) * RECTANGULAR);
    const limit = gain + digits * resolution;
    add(leaf, "reading", Math.sqrt(Math.max(0, limit * limit - shared)) * RECTANGULAR);
    add(detail, "resolution", (resolution / 2) * RECTANGULAR);
    if (range === "continuity" && bound === "exact") {
      const leads = this.#table.leadsOf(taken.instrument, taken.at);
      add(leads.key, "leads", leads.half * RECTANGULAR);
      if (!leads.recorded) this.notes.add("leads-assumed");
    }
    if (bound !== "exact") this.notes.add("open-ended");
    return { expected: value, causes, deviations, open: bound === "above" ? 1 : bound === "below" ? -1 : 0 };
  }

  /** As stated, else the ceiling of the instrument standard, else nothing but the digits. */
  #accuracy({ detail, term }: Measured<Unit>): Pick<Accuracy, "ofReading" | "digits"> {
    const stated = detail.accuracy === null ? undefined : parseAccuracy(detail.accuracy);
    if (stated !== undefined) return stated;
    const range = rangeOf(term);
    const part = range === undefined ? null : CEILING_OF[range];
    const ceiling = part === null ? undefined : operatingUncertainty(part);
    if (ceiling === undefined || !isKnown(ceiling)) {
      this.notes.add("no-ceiling");
      return { ofReading: 0, digits: 0 };
    }
    this.notes.add("accuracy-not-stated");
    return { ofReading: Math.max(1 - ceiling.low, ceiling.high - 1), digits: 0 };
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
