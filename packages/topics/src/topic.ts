import type { Answer, Classification, Expression, Severity, Statements, Subject } from "@good-grounds/core";

/** Parts of an installation under which topics are listed, in the order of a walk from the origin outwards. */
export const TOPIC_GROUPS = [
  "intake",
  "earthing",
  "boards",
  "residual-current",
  "circuits",
  "cables",
  "accessories",
  "baths",
  "outdoors",
  "special",
  "sources",
  "identification",
  "fire",
] as const;
export type TopicGroup = (typeof TOPIC_GROUPS)[number];

/** A way of putting a thing right: what is done, and the facts that are different afterwards. */
export interface Remedy {
  readonly words: string;
  readonly changes: Readonly<Record<string, string>>;
  /** Where it is a remedy at all; everywhere where left out. */
  readonly where?: Expression;
}

/** A worked case of a topic. Run by one test for all of them. */
export interface TopicExample {
  readonly name: string;
  readonly facts: Readonly<Record<string, Answer>>;
  readonly positions?: Readonly<Record<string, string>>;
  /** Severities that stay possible. */
  readonly possible: readonly Severity[];
  /** The classification that follows, where one does. */
  readonly classification?: Classification;
  /** Facts that must still be open. */
  readonly missing?: readonly string[];
  /** Where the expected answer comes from. */
  readonly source: string;
}

/** Words for whoever ordered the report, where those of the trade would not be understood. */
export interface PlainWords {
  /** What is not known while a fact is open, as a noun clause: "how close live metal is". */
  readonly facts: Readonly<Record<string, string>>;
  /** What is so, as a clause, by fact and value. */
  readonly values: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** How the answer to a fact that earlier files knew by another name is read: the fact today, and what each value says of it; nothing where the values are the same. */
export interface FormerFact {
  readonly fact: string;
  readonly says: Readonly<Record<string, string>>;
}

/**
 * One subject of observation: what to ask, what stands between the hazard and a person, what the edition asks for, and
 * where competent inspectors differ. Facts and routes lead to a severity only through the layers left.
 */
export interface Topic extends Subject {
  readonly title: string;
  readonly group: TopicGroup;
  /** Points of the inspection, by id, that an observation on this topic answers. */
  readonly items: readonly string[];
  /** Facts and contested points that are defined once for all topics. */
  readonly shared: readonly string[];
  /** Shared facts that the subject itself says and that the file may record: the values that it leaves; none where left out. */
  readonly given?: Readonly<Record<string, readonly string[]>>;
  readonly plain: PlainWords;
  /** Facts of earlier files by the names they had, with none where it is no longer asked. */
  readonly formerly?: Readonly<Record<string, readonly FormerFact[]>>;
  /**
   * What the person who ordered the report is told, a plain sentence or two by classification; reading age about eleven.
   * Words that claim more than the classification itself implies carry the rule under which they are true; of several the
   * first that holds is said, and none where none holds.
   */
  readonly client: Readonly<Partial<Record<Classification, Statements>>>;
  /** Cheapest adequate first. */
  readonly remedies: readonly Remedy[];
  readonly examples: readonly TopicExample[];
}
