import type { Path } from "./issue/issue.ts";
import type { Explanation, MisfitKind } from "./misfit.ts";
import type { Severity } from "./reasoning/subject.ts";
import type { Classification, EditionId } from "./vocabulary/premises.ts";

/** Tests without which nobody can say that a circuit, a device or the supply is sound. */
export const ESSENTIAL_TESTS = [
  "continuity",
  "insulation",
  "polarity",
  "zs",
  "rcd-present",
  "rcd-time",
  "ze",
  "supply-polarity",
] as const;
export type EssentialTest = (typeof ESSENTIAL_TESTS)[number];

/** What the facts of an observation come to where a lower classification was chosen; FI: danger cannot be ruled out. */
export type FollowsDespite = "C1" | "C2" | "FI";

/** What two records of one inspection can say that cannot both stand without a word. */
export const CONTRADICTIONS = [
  "stated-against-file",
  "danger-unnamed",
  "made-safe-and-to-make-safe",
  "told-and-untold",
  "in-order-beside-none",
  "in-order-beside-failed-check",
  "not-applicable-beside-recorded",
  "polarity-beside-readings",
  "button-beside-failed-time",
  "cannot-be-tested-beside-time",
  "limitation-over-measured",
  "outcome-stated-otherwise",
] as const;
export type ContradictionId = (typeof CONTRADICTIONS)[number];

interface Open<K extends string> {
  readonly kind: K;
  /** Where in the inspection file it stands open, in the order of the file. What shares a cause is one point. */
  readonly places: readonly Path[];
  /** What stands open for the same cause elsewhere: it goes when this is settled. None where it is left out. */
  readonly follow?: readonly OpenPoint[];
}

/**
 * Something that decides and that nobody has answered. Its kinds:
 * - `earthing-off`: by the record the earthing conductor is still disconnected.
 * - `danger-untold`: observations of C1 that say neither what made it safe and who was told nor why nobody could be told.
 * - `below-the-facts`: a classification lower than the stated facts give, without a reason of its own.
 * - `contradiction`: records that cannot all stand, and of which nobody wrote why; `about` says of which kind.
 * - `unclassified`: observations without a classification; `follows` where their facts already give C1 or C2.
 * - `not-met`: a check that is not met, of which no observation with a classification speaks.
 * - `past-limit`: a reading past its limit by less than the instrument can tell, of which no observation speaks.
 * - `not-known`: a reading that was taken and cannot be held against its limit, for the limit is not known.
 * - `misfit`: readings that cannot all be true, of which no observation speaks; `lead` is the likeliest explanation.
 * - `opened`: a subject that the recorded installation asks for by itself and of which no observation speaks; `possible`
 *   is what its facts leave by the file alone.
 * - `defective-sample`: parts found defective in a sample, of which no observation speaks.
 * - `nothing-tested`: no test of any circuit is recorded.
 * - `not-tested`: essential tests neither recorded nor limited with a written reason.
 * - `nothing-inspected`: no item of the inspection was looked at.
 * - `not-inspected`: items of the inspection without an answer, not verified, or limited where more are limited than
 *   were looked at; `answered` says which.
 */
export type OpenPoint =
  | Open<"earthing-off" | "danger-untold" | "nothing-tested" | "nothing-inspected">
  | (Open<"below-the-facts"> & { readonly follows: FollowsDespite; readonly chosen: Classification })
  | (Open<"contradiction"> & { readonly about: ContradictionId })
  | (Open<"unclassified"> & { readonly follows: "C1" | "C2" | null })
  | (Open<"not-met" | "past-limit" | "not-known"> & { readonly check: string })
  | (Open<"misfit"> & { readonly misfit: MisfitKind; readonly lead: Pick<Explanation, "id" | "words"> | null })
  | (Open<"opened"> & { readonly topic: string; readonly title: string; readonly possible: readonly Severity[] })
  | (Open<"defective-sample"> & { readonly what: string; readonly defective: number; readonly inspected: number })
  | (Open<"not-tested"> & { readonly tests: readonly EssentialTest[] })
  | (Open<"not-inspected"> & {
      readonly answered: "not" | "not-verified" | "limited";
      readonly items: readonly string[];
    });

/** A check not met and near to harm that an observation answers by calling it no danger, in the inspector's judgement alone. */
export interface Dismissed {
  /** Id of the observation. */
  readonly observation: string;
  readonly path: Path;
  readonly chosen: "C3" | "none";
  readonly checks: readonly string[];
  /** As the inspector wrote it. */
  readonly reason: string;
}

/** An observation whose stated facts give more than the inspector chose. */
export interface ChoiceBelowFacts {
  /** Id of the observation. */
  readonly observation: string;
  readonly path: Path;
  readonly follows: FollowsDespite;
  readonly chosen: Classification;
  /** The reason as written; null where none is, or what stands there gives none. */
  readonly reason: string | null;
}

/**
 * The technical outcome of an inspection under one edition: from the classifications the inspector chose, and from what
 * still stands open. Legal duties are a separate matter and never part of it.
 */
export interface Outcome {
  /** Null where none was chosen yet. */
  readonly edition: EditionId | null;
  /**
   * `unsatisfactory` where a chosen classification makes it so, whatever stands open; `satisfactory` only where nothing
   * that decides stands open; else `not-determined`.
   */
  readonly outcome: "satisfactory" | "unsatisfactory" | "not-determined";
  /** Ids of the observations that decide it. */
  readonly because: readonly string[];
  readonly count: Readonly<Record<Classification, number>>;
  /** Observations without a classification. */
  readonly open: readonly string[];
  /** Everything that decides and that nobody has answered, danger first. */
  readonly points: readonly OpenPoint[];
  /** Choices below what the stated facts give, with a reason or without one. */
  readonly below: readonly ChoiceBelowFacts[];
  /** Checks not met and near to harm that are answered by a reason alone: whoever reads the outcome reads the reason. */
  readonly dismissed: readonly Dismissed[];
  /** Ids of the observations classified FI: what is not known and has to be investigated, whatever the outcome. */
  readonly investigate: readonly string[];
  /** Plain sentences a reader needs beside the outcome, such as what the edition says about FI. */
  readonly remarks: readonly { readonly code: string; readonly words: string }[];
}
