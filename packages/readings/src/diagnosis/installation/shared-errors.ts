import type { Reading } from "./fitted-reading.ts";
import { isLive, type Slot } from "./slot.ts";

/** What nulling left of a pair of leads: one error in all dead tests from one nulling to the next. */
export interface LeadsCause {
  readonly cause: string;
  readonly meter: string;
  /** Standard deviation of what is usually left, Ω. */
  readonly deviation: number;
  /** Place among the shared errors. */
  readonly at: number;
}

/** The errors that the readings of one board share, by position: two of the board, then one for each cause of readings. */
export class SharedErrors {
  /** Deviation of the true loop at the board from the value the fit starts at. */
  static readonly BEFORE = 0;
  /** Deviation common to the stated lengths of the board. */
  static readonly LENGTHS = 1;
  readonly #positions = new Map<string, number>();
  readonly leads: readonly LeadsCause[];
  /** Loop at the board the fit starts at, Ω, and how far it may be from it. */
  readonly before: number;
  readonly beforeDeviation: number;

  /** `before` is where the fit starts, `usual` what a loop reading of the board's circuits usually shows, Ω. */
  constructor(readings: readonly Reading[], before: number, usual: number) {
    const leads: LeadsCause[] = [];
    for (const { shared, meter } of readings) {
      for (const [cause, deviation] of shared) {
        if (this.#positions.has(cause) || this.#positions.size >= MOST_CAUSES) continue;
        const at = this.size;
        this.#positions.set(cause, at);
        if (cause.startsWith("leads ") && deviation > 0) leads.push({ cause, meter, deviation, at });
      }
    }
    this.leads = leads;
    this.before = before;
    this.beforeDeviation = 3 * (before + usual) + 3;
  }

  get size(): number {
    return 2 + this.#positions.size;
  }

  /** Standard deviation of what is a reading's own, with the causes that are not followed. */
  ownOf({ own, shared }: Reading): number {
    let sum = own * own;
    for (const [cause, deviation] of shared) if (!this.#positions.has(cause)) sum += deviation * deviation;
    return Math.sqrt(sum);
  }

  row(slot: Slot, reading: Reading, resistance: number): Float64Array {
    const row = new Float64Array(this.size);
    if (isLive(slot)) row[SharedErrors.BEFORE] = this.beforeDeviation;
    row[SharedErrors.LENGTHS] = LENGTHS_DEVIATION * resistance;
    for (const [cause, deviation] of reading.shared) {
      const at = this.#positions.get(cause);
      if (at !== undefined) row[at] = deviation;
    }
    return row;
  }
}

/** More causes on one board than this are taken as errors that every reading has by itself. */
const MOST_CAUSES = 8;

/** Deviation of what is common to the lengths stated on one board, as a part. */
export const LENGTHS_DEVIATION = 0.01;
