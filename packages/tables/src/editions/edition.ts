import type { Classification, EditionId, Source } from "@good-grounds/core";

/** A document that makes or changes an edition. */
export interface Amendment {
  readonly name: string;
  /** Day of publication, ISO. */
  readonly published: string;
  readonly changes: readonly string[];
  readonly source: Source;
}

/** An amendment state of BS 7671 as a dated pack. */
export interface Edition {
  readonly id: EditionId;
  readonly label: string;
  /** Day from which it may be used, ISO. */
  readonly published: string;
  /** Day from which it may no longer be used; null while it is in force. */
  readonly withdrawn: string | null;
  /** What holds while it overlaps with its neighbour. */
  readonly overlap: string;
  /** Where the days and the overlap come from. */
  readonly source: Source;
  /** The amendments it consists of, oldest first. */
  readonly amendments: readonly Amendment[];
  /** Classifications that make the outcome unsatisfactory, as commonly applied. */
  readonly unsatisfactory: readonly Classification[];
  /** Classifications that the model form itself names as making it so. */
  readonly unsatisfactoryByForm: readonly Classification[];
  /** What a reader is told where FI occurs. */
  readonly furtherInvestigation: string;
  /** Where the rule of the outcome comes from. */
  readonly outcomeSource: Source;
  /** The regulation that says which final circuits fall under Table 41.1, and the text of it that is meant. */
  readonly disconnectionScope: { readonly regulation: string; readonly asOf: "2018" };
  readonly notes: readonly string[];
}
