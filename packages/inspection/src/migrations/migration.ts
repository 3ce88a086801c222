/** A step from one version of the inspection file to the next. `up` gets a document of version `from` and must not change it. */
export interface Migration {
  readonly from: number;
  readonly to: number;
  /** What changed, for the log of an opened file. */
  readonly what: string;
  readonly up: (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}
