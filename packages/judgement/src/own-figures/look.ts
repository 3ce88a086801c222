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
export type Looked = readonly Found[] | { readonly because: string };

/** One way of looking at the figures of a job. */
export interface Look extends Pick<FiguresToConfirm, "title" | "test" | "assumed" | "innocent"> {
  readonly id: string;
  readonly look: (job: Job) => Looked;
}

/** Weights of what is no matter of chance, on the scale of the others: the record contradicts itself, or is merely odd. */
export const WEIGHT = Object.freeze({ contradicts: 5, odd: 3, slight: 1.5 });
