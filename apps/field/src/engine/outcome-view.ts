/** The outcome that follows from what is recorded, and what stands open, danger first; each at a place of the record. */
export interface OutcomeView {
  readonly outcome: "satisfactory" | "unsatisfactory" | "not-determined";
  readonly points: readonly { readonly path: string; readonly words: string }[];
  /** What an observation can answer and no check offers: by its name, the place of the record and in words. */
  readonly toAnswer: readonly { readonly check: string; readonly path: string; readonly words: string }[];
  /** How the signatures stand to what is recorded now; empty where nobody signed. */
  readonly signatures: readonly ("signed" | "changed" | "unbound")[];
  /** Checks not met that only a reason answers. */
  readonly dismissed: readonly { readonly path: string; readonly words: string }[];
  /** What is not known and has to be investigated. */
  readonly investigate: readonly { readonly path: string; readonly words: string }[];
  /** Choices below what the facts stated give. */
  readonly below: readonly { readonly path: string; readonly words: string }[];
}

/** Something in the inspector's own figures to confirm before somebody else asks. */
export interface ToConfirm {
  readonly check: string;
  readonly title: string;
  /** What is held against what. */
  readonly test: string;
  readonly words: string;
  readonly numbers: readonly string[];
  readonly readings: readonly string[];
  /** How it comes about in honest work. */
  readonly innocent: readonly string[];
  readonly notes: readonly string[];
}
