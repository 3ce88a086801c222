import type { Classification, EditionId } from "./vocabulary/premises.ts";

/**
 * The technical outcome that follows from the classifications the inspector chose, under one edition. Legal duties are
 * a separate matter and never part of it.
 */
export interface Outcome {
  readonly edition: EditionId;
  /** `not-determined`: an observation is still without a classification, so the outcome may yet change. */
  readonly outcome: "satisfactory" | "unsatisfactory" | "not-determined";
  /** Ids of the observations that decide it. */
  readonly because: readonly string[];
  readonly count: Readonly<Record<Classification, number>>;
  /** Observations without a classification. */
  readonly open: readonly string[];
  /** Plain sentences a reader needs beside the outcome, such as what the edition says about FI. */
  readonly remarks: readonly { readonly code: string; readonly words: string }[];
}
