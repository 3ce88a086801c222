import { NULL_DEVIATION, type Reading } from "./noise.ts";
import { isLive, type Slot } from "./slot.ts";

/** The errors the readings of one board share, by position. */
export class SharedErrors {
  /** Deviation of the true loop at the board from the value the fit starts at. */
  static readonly BEFORE = 0;
  /** Deviation common to the stated lengths of the board. */
  static readonly LENGTHS = 1;
  readonly #meters: readonly string[];
  /** Loop at the board the fit starts at, Ω, and how far it may be from it. */
  readonly before: number;
  readonly beforeDeviation: number;

  /** `before` is where the fit starts, `usual` what a loop reading of the board's circuits usually shows, Ω. */
  constructor(meters: readonly string[], before: number, usual: number) {
    this.#meters = meters.slice(0, MOST_METERS);
    this.before = before;
    this.beforeDeviation = 3 * (before + usual) + 3;
  }

  get size(): number {
    return 2 + 3 * this.#meters.length;
  }

  /** Position of what nulling left of the leads of a meter; undefined for a meter that is not followed. */
  nullOf(meter: string): number | undefined {
    const at = this.#meters.indexOf(meter);
    return at < 0 ? undefined : 2 + 3 * at;
  }

  /** The meters whose shared errors are followed. */
  get meters(): readonly string[] {
    return this.#meters;
  }

  row(slot: Slot, reading: Reading, resistance: number): Float64Array {
    const row = new Float64Array(this.size);
    const at = this.nullOf(reading.meter);
    if (isLive(slot)) row[SharedErrors.BEFORE] = this.beforeDeviation;
    row[SharedErrors.LENGTHS] = LENGTHS_DEVIATION * resistance;
    if (at === undefined) return row;
    if (isLive(slot)) row[at + 2] = reading.scale * reading.value;
    else {
      row[at] = NULL_DEVIATION;
      row[at + 1] = reading.scale * reading.value;
    }
    return row;
  }
}

/** More meters on one board than this are taken to have errors of their own at every reading. */
const MOST_METERS = 4;

/** Deviation of what is common to the lengths stated on one board, as a part. */
export const LENGTHS_DEVIATION = 0.01;
