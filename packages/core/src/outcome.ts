import type { Path } from "./issue/issue.ts";
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

interface Open<K extends string> {
  readonly kind: K;
  /** Where in the inspection file it stands open, in the order of the file. What shares a cause is one point. */
  readonly places: readonly Path[];
}

/**
 * Something that decides and that nobody has answered. Its kinds:
 * - `earthing-off`: by the record the earthing conductor is still disconnected.
 * - `below-the-facts`: a classification lower than the stated facts give, without a written reason.
 * - `contradiction`: observations that state a fact otherwise than the file or a finding of the same thing has it, without
 *   a written reason.
 * - `unclassified`: observations without a classification; `follows` where their facts already give C1 or C2.
 * - `not-met`: a check that is not met, of which no observation with a classification speaks.
 * - `past-limit`: a reading past its limit by less than the instrument can tell, of which no observation speaks.
 * - `opened`: a subject that the recorded installation asks for by itself and of which no observation speaks; `possible`
 *   is what its facts leave by the file alone.
 * - `nothing-tested`: no test of any circuit is recorded.
 * - `not-tested`: essential tests neither recorded nor limited with a written reason.
 * - `nothing-inspected`: no item of the inspection was looked at.
 * - `not-inspected`: items of the inspection without an answer, not verified, or limited where more are limited than
 *   were looked at; `answered` says which.
 */
export type OpenPoint =
  | Open<"earthing-off" | "contradiction" | "nothing-tested" | "nothing-inspected">
  | (Open<"below-the-facts"> & { readonly follows: FollowsDespite; readonly chosen: Classification })
  | (Open<"unclassified"> & { readonly follows: "C1" | "C2" | null })
  | (Open<"not-met" | "past-limit"> & { readonly check: string })
  | (Open<"opened"> & { readonly topic: string; readonly title: string; readonly possible: readonly Severity[] })
  | (Open<"not-tested"> & { readonly tests: readonly EssentialTest[] })
  | (Open<"not-inspected"> & {
      readonly answered: "not" | "not-verified" | "limited";
      readonly items: readonly string[];
    });

/** An observation whose stated facts give more than the inspector chose. */
export interface ChoiceBelowFacts {
  /** Id of the observation. */
  readonly observation: string;
  readonly path: Path;
  readonly follows: FollowsDespite;
  readonly chosen: Classification;
  /** The reason as written; null where none is, or only a sign that stands for none. */
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
  /** Plain sentences a reader needs beside the outcome, such as what the edition says about FI. */
  readonly remarks: readonly { readonly code: string; readonly words: string }[];
}
