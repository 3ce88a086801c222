import type {
  AnswerFault,
  Classification,
  FactGround,
  FactOf,
  Issue,
  Judgement,
  Path,
  Reasoning,
  Severity,
} from "@good-grounds/core";
import type { Remedy, Topic } from "@good-grounds/topics";
import type { LayersBetween } from "./layers-between.ts";
import type { OpeningSection } from "./opening-section.ts";

/** A fact that a computation answers, with the judgement it rests on. */
export interface WorkedFact {
  readonly fact: string;
  readonly by: string;
  /** The value that follows, or null where the computation leaves it open. */
  readonly value: string | null;
  readonly judgement: Judgement;
  /** The places in the file of which its findings speak; left out where it was made from figures given by hand. */
  readonly of?: readonly Path[];
}

/** A fact for which figures were given by hand that do not suffice. */
export interface UnfinishedFact {
  readonly fact: string;
  /** Id of the computation that was begun. */
  readonly by: string;
  /** What it lacks: figures by the names that a topic takes, and in words what no table has. */
  readonly lacks: readonly string[];
}

/** A fact that the inspection records, with the leaf it rests on. */
export interface RecordedFact {
  readonly fact: string;
  /** Id of the property that is recorded. */
  readonly property: string;
  /** The property as it is recorded, in words: "system earthing: TT". */
  readonly words: string;
  readonly value: string;
  readonly leaf: FactGround;
  readonly of: readonly Path[];
}

/** A fact that is known without having been asked. */
export type KnownFact = WorkedFact | RecordedFact;

/** A fact of which several things, or several sources, say what cannot all be so. It stays open. */
export interface Differing {
  readonly fact: string;
  readonly answers: readonly KnownFact[];
}

/** What is known of a fact and does not fit what the observation says of it. */
export type Otherwise = KnownFact & {
  /** The values that the observation states; null where it states a limitation, beside which this only stands. */
  readonly stated: string | null;
  /** The fact where not the observation but its topic says otherwise: it takes it as given, and asks nobody. */
  readonly given?: FactOf;
  /** Id of the topic that asks it; set with `given`. */
  readonly askedBy?: string;
};

/** A remedy and what would be possible once it is done. */
export interface RemedyEffect {
  readonly remedy: Remedy;
  readonly after: readonly Severity[];
}

/** Everything that follows for one topic. */
export interface TopicReasoning {
  readonly topic: Topic;
  readonly reasoning: Reasoning;
  /**
   * The least severity that stands: the least that is possible, and where statements contradict what is known, the worst
   * of what each reading would lead to at the least. Nothing below it is a settled answer.
   */
  readonly least: Severity;
  readonly faults: readonly AnswerFault[];
  /** What is wrong with figures given for computations, placed by the figure's name. */
  readonly issues: readonly Issue[];
  /** What the person who ordered the report can be told under each classification; only what is known to be true. */
  readonly client: Readonly<Partial<Record<Classification, string>>>;
  /**
   * What could not be found out and could still change what follows, in plain words, for the sentence under FI; none where
   * that sentence says it itself.
   */
  readonly notFoundOut: readonly string[];
  /** Facts that computations answered. */
  readonly worked: readonly WorkedFact[];
  /** Facts that figures given by hand were to answer and do not; left out where there are none. */
  readonly unfinished?: readonly UnfinishedFact[];
  /** Facts that the inspection records. */
  readonly recorded: readonly RecordedFact[];
  /** What is known and says otherwise than what was stated: to be settled, or beside a limitation. */
  readonly against: readonly Otherwise[];
  /** Facts of which the things spoken of, or the sources, do not say the same. */
  readonly differing: readonly Differing[];
  /** Remedies that lower what is possible, cheapest first; those that leave danger for certain come after the others. */
  readonly remedies: readonly RemedyEffect[];
  /** The opening that figures describe, to be drawn. */
  readonly opening?: OpeningSection;
  /** The layers between live metal and a person, where the topic rests on them; to be drawn. */
  readonly between?: LayersBetween;
}

/** The line of reasoning of one observation of an inspection, and how the inspector's choice stands to it. */
export interface ObservationReasoning extends TopicReasoning {
  readonly observation: string;
  readonly path: Path;
  readonly chosen: Classification | null;
  /** How the choice stands to what follows: `same`; `allowed` while more than one is possible or by another position; `differs`. */
  readonly choice: "none" | "same" | "allowed" | "differs";
  /** What was done about danger before leaving. */
  readonly madeSafe?: string;
}
