/** Readings of one place that do not agree, as screens show them. */
export interface MisfitView {
  /** As in the record: "boards/cu/circuits/c1". */
  readonly path: string;
  readonly title: string;
  /** Whether they cannot all be true; else it is only possible that they are not. */
  readonly clear: boolean;
  /** What was read, what explains it with its share, what to read next, and what may be no fault at all. */
  readonly words: readonly string[];
}
