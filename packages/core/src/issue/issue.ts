/** Steps from the document's root to the place that is meant. */
export type Path = readonly (string | number)[];

/**
 * One thing wrong with an input, as data. Sentences are made where people read them.
 * `code` names the kind of fault and never changes its meaning.
 */
export interface Issue {
  readonly code: string;
  readonly path: Path;
  /** What stands there, shortened. */
  readonly found: string;
  /** What was expected there. */
  readonly expected: string;
  /** What to do about it. */
  readonly advice: string;
}

/** A path as a JSON Pointer (RFC 6901): "/boards/0/circuits/3/readings/zs". */
export function pointer(path: Path): string {
  return path.map((step) => `/${String(step).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}
