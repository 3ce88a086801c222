import type { Measured } from "./grounds/evidence.ts";
import type { Unit } from "./quantity/unit.ts";

/** A number a test came to, in words: "equal to the last digit", "8 of 9". */
export interface OwnFiguresNumber {
  readonly what: string;
  readonly value: string;
}

/** Something in an inspector's own figures that is worth a second look before somebody else takes one. */
export interface FiguresToConfirm {
  /** Id of the test, as notes name it. */
  readonly check: string;
  readonly title: string;
  /** What is held against what, and how. */
  readonly test: string;
  /** What was found, as a sentence. */
  readonly words: string;
  readonly numbers: readonly OwnFiguresNumber[];
  /** The readings it is about, as the file has them. */
  readonly readings: readonly Measured<Unit>[];
  /** What the chance rests on besides the readings. */
  readonly assumed: readonly string[];
  /** How it comes about in honest work. */
  readonly innocent: readonly string[];
  /**
   * The chance is at most this that sound readings of one job look like this. Null where the record contradicts itself or
   * lacks something, which is no matter of chance.
   */
  readonly chance: number | null;
  /** Order of importance: minus the decimal logarithm of the chance, or the weight given to the contradiction. */
  readonly weight: number;
  /** What the inspector wrote to it. */
  readonly notes: readonly string[];
}

/** What came of looking at one's own figures. Private to the inspector: no report carries any of it. */
export interface OwnFigures {
  /** Heaviest first. */
  readonly toConfirm: readonly FiguresToConfirm[];
  /** Tests that found nothing to work on, and why. */
  readonly notLookedAt: readonly { readonly check: string; readonly title: string; readonly because: string }[];
  /** Notes to tests that find nothing now. */
  readonly otherNotes: readonly { readonly check: string; readonly title: string; readonly note: string }[];
}
