import type { FiguresToConfirm, Measured, OwnFiguresNumber, Unit } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { Entry } from "./entries.ts";
import type { Row } from "./rows.ts";

/** A job as the tests see it, and the one it is held against, where there is one. */
export interface Job {
  readonly installation: Installation;
  /** Circuits with their readings, in the order of the file. */
  readonly rows: readonly Row[];
  /** Every reading of the file, wherever it stands. */
  readonly entries: readonly Entry[];
  readonly earlier: Job | undefined;
}

/** What a test found. `chance` as in {@link FiguresToConfirm}; a contradiction of the record has a `weight` instead. */
export interface Found {
  readonly words: string;
  readonly numbers: readonly OwnFiguresNumber[];
  readonly readings: readonly Measured<Unit>[];
  readonly chance: number | null;
  readonly weight?: number;
}

/** What came of a test: what it found, or why there was nothing to look at. */
type Looked = readonly Found[] | { readonly because: string };

/**
 * The chance at which something is shown: sound readings of a job come to less than this with each of the tests. There are
 * about twenty, most of them bounded from above, so that fewer than one sound job in a hundred shows anything.
 */
export const SHOWN_BELOW = 1e-3;

/**
 * The same for tests by mean likelihood ratios. Their chance is a bound that sound jobs stay far from (measured over
 * thousands: one in a thousand comes to a tenth of it), so it may be larger.
 */
export const RATIO_SHOWN_BELOW = 5e-3;

/** One way of looking at the figures of a job. */
export interface Look extends Pick<FiguresToConfirm, "title" | "test" | "assumed" | "innocent"> {
  readonly id: string;
  /** The chance below which it shows what it found, where it is not {@link SHOWN_BELOW}. */
  readonly shownBelow?: number;
  readonly look: (job: Job) => Looked;
}

/** Weights of what is no matter of chance, on the scale of the others: the record contradicts itself, or is merely odd. */
export const WEIGHT = Object.freeze({ contradicts: 5, odd: 3, slight: 1.5 });
