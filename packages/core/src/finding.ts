import type { Judgement } from "./grounds/evidence.ts";
import type { Path } from "./issue/issue.ts";

/** Something a reader should know beside the verdict. `code` is stable; `words` is a plain sentence. */
export interface Remark {
  readonly code: string;
  readonly words: string;
}

/** What a check comes to: the judgement that decides, what is shown beside it, and remarks. */
export interface Conclusion {
  readonly judgement: Judgement;
  /** Judgements shown for comparison, such as a rule of thumb. They never decide. */
  readonly beside: readonly Judgement[];
  readonly remarks: readonly Remark[];
  /** Matters within it that facts of an observation rest on singly; kept whether grounds are kept or not. */
  readonly settles?: readonly Judgement[];
}

/** A conclusion about a place in an inspection file. */
export interface Finding extends Conclusion {
  /** The check's id. */
  readonly check: string;
  /** Where in the file: the circuit, board or supply. */
  readonly path: Path;
}

/** Everything the checks come to for one inspection file, in the order of the file. */
export interface Weighing {
  readonly supply: readonly Finding[];
  /** One list for each board. */
  readonly boards: readonly (readonly Finding[])[];
  /** One list for each circuit, circuits counted through all boards. */
  readonly circuits: readonly (readonly Finding[])[];
}

/** What a reader is told about a check besides its findings. */
export interface CheckLabel {
  readonly id: string;
  readonly title: string;
  readonly formula: string;
  readonly regulations: readonly string[];
}
