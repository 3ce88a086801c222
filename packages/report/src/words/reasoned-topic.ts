import type {
  Classification,
  FactGround,
  FactOf,
  Judgement,
  Path,
  Reasoning,
  Severity,
  Subject,
} from "@good-grounds/core";
import type { CableDrawing } from "../drawings/cable-section.ts";
import type { ProbeDrawing } from "../drawings/probe.ts";
import type { LayersDrawing } from "../drawings/protection-layers.ts";
import type { REASONING } from "../locales/reasoning-en.ts";

/** A fact that a computation answers, with the places of which its findings speak. */
interface WorkedAnswer {
  readonly fact: string;
  readonly by: string;
  readonly value: string | null;
  readonly judgement: Judgement;
  readonly of?: readonly Path[];
}

/** A fact that the inspection records. */
interface RecordedAnswer {
  readonly fact: string;
  readonly property: string;
  /** The property as it is recorded, in words. */
  readonly words: string;
  readonly value: string;
  readonly leaf: FactGround;
  readonly of: readonly Path[];
}

/** A fact that is known without having been asked. */
export type KnownAnswer = WorkedAnswer | RecordedAnswer;

/** What is known and does not fit what is stated; `stated` is null beside a limitation. */
export type Otherwise = KnownAnswer & {
  readonly stated: string | null;
  /** The fact where the topic itself, and not the observation, says otherwise, with the id of the topic that asks it. */
  readonly given?: FactOf;
  readonly askedBy?: string;
};

/** Answers to one fact that cannot all be so. */
interface DifferingAnswers {
  readonly fact: string;
  readonly answers: readonly KnownAnswer[];
}

/** A topic as a report needs it. */
export interface ReasonedTopic {
  readonly topic: Subject & { readonly title: string };
  readonly reasoning: Reasoning;
  /** What the person who ordered the report can be told under each classification; only what is known to be true. */
  readonly client: Readonly<Partial<Record<Classification, string>>>;
  /** What could not be found out and could change what follows, in plain words, where the sentence under FI leaves it to these. */
  readonly notFoundOut: readonly string[];
  /** Facts that computations answered. */
  readonly worked: readonly WorkedAnswer[];
  /** Facts that figures given by hand were to answer, by the computation that was begun, and what it lacks. */
  readonly unfinished?: readonly { readonly fact: string; readonly by: string; readonly lacks: readonly string[] }[];
  /** Facts that the inspection records. */
  readonly recorded: readonly RecordedAnswer[];
  /** What is known and says otherwise than what was stated; `stated` is null beside a limitation. */
  readonly against: readonly Otherwise[];
  /** Facts of which the things spoken of, or the sources, do not say the same. */
  readonly differing: readonly DifferingAnswers[];
  /** The layers between live metal and a person, where the topic rests on them. */
  readonly between?: LayersDrawing;
  readonly remedies: readonly { readonly remedy: { readonly words: string }; readonly after: readonly Severity[] }[];
}

/** The reasoning of one observation of an inspection, with the inspector's choice. */
export interface ReasonedObservation extends ReasonedTopic {
  readonly observation: string;
  readonly chosen: Classification | null;
  readonly choice: keyof typeof REASONING.choice;
  /** What was done about danger before leaving. */
  readonly madeSafe?: string;
  /** The opening its figures describe; words are found for it here. */
  readonly opening?: Omit<ProbeDrawing, "words">;
  /** The cable it is about, with the layers that are gone, where its construction and what is left are recorded. */
  readonly cable?: CableDrawing;
}

/** A line of an argument: how deep it stands, its tag, and what it says. */
export interface ReasoningLine {
  readonly depth: number;
  readonly tag: string;
  readonly words: string;
}
