/** A situation of the table as one topic says it, in the topic's own facts. */
export interface SameClass {
  readonly topic: string;
  /** The words of the situation. */
  readonly situation: string;
  readonly facts: Readonly<Record<string, string>>;
  readonly positions?: Readonly<Record<string, string>>;
}
