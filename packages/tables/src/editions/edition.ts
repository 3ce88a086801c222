import type { Classification, EditionId } from "@good-grounds/core";

/** An amendment state of BS 7671 as a dated pack. */
export interface Edition {
  readonly id: EditionId;
  readonly label: string;
  /** Day from which it may be used, ISO. */
  readonly published: string;
  /** Day from which it may no longer be used; null while it is in force. */
  readonly withdrawn: string | null;
  /** Classifications that make the outcome unsatisfactory. */
  readonly unsatisfactory: readonly Classification[];
  /** What a reader is told where FI occurs. */
  readonly furtherInvestigation: string;
  readonly notes: readonly string[];
}
