import type { Answer, Classification, Severity } from "@good-grounds/core";
import type { Line } from "./view.ts";

export type Facts = Readonly<Record<string, Answer>>;

/** Positions on contested points, by the point's name. */
export type Positions = Readonly<Record<string, string>>;

/** Where an observation is; findings there answer facts of its topic. */
export interface Where {
  readonly board?: string;
  readonly circuit?: string;
  /** Single RCDs and bonding conductors that it names. */
  readonly parts?: readonly { readonly id: string; readonly board?: string }[];
}

export interface TopicLabel {
  readonly id: string;
  readonly title: string;
  readonly group: string;
  readonly groupTitle: string;
}

/** One value a fact may have. */
export interface ValueView {
  readonly value: string;
  /** What is so then, as a clause. */
  readonly words: string;
}

/** One fact of a topic. */
export interface FactView {
  readonly fact: string;
  readonly asks: string;
  readonly kind: "yes-no" | "choice" | "quantity";
  /** Empty for a quantity. */
  readonly values: readonly ValueView[];
  /** Of a quantity: the unit it is asked in. */
  readonly unit?: string;
  /** What it takes to find out, from a glance to beyond the extent. */
  readonly effort: string;
  /** Whether its answer could still change what is possible. */
  readonly open: boolean;
  /** What is known of it, in words; absent where nothing is. */
  readonly known?: { readonly tag: string; readonly words: string };
}

/** The next question and what each answer would leave possible. */
export interface QuestionView extends FactView {
  readonly leaves: readonly (ValueView & { readonly possible: readonly Severity[] })[];
}

interface ContestedView {
  readonly point: string;
  readonly question: string;
  readonly positions: readonly {
    readonly position: string;
    readonly words: string;
    readonly because: string;
    readonly taken: boolean;
    readonly possible: readonly Severity[];
  }[];
}

/** What would change the classification: facts as clauses, and what would be possible then. */
export interface ChangeView {
  readonly clauses: readonly string[];
  readonly possible: readonly Severity[];
}

/** A figure of an opening that can be given instead of trying a probe. */
export interface FigureView {
  readonly name: string;
  readonly asks: string;
  /** Words to choose from; empty for a length. */
  readonly values: readonly string[];
  readonly given: string;
}

/** A line of reasoning as screens show it. Nothing here is a decision: the person decides. */
export interface ReasonView {
  readonly topic: TopicLabel;
  readonly headline: string;
  readonly possible: readonly Severity[];
  readonly underAnyView: readonly Severity[];
  /** The classification that follows; null while questions are open. */
  readonly classification: Classification | null;
  /** The plain sentence for the client under each classification that has one. */
  readonly client: Readonly<Partial<Record<Classification, string>>>;
  /** The argument in parts, each a heading and lines. */
  readonly parts: readonly { readonly heading: string; readonly lines: readonly Omit<Line, "note">[] }[];
  readonly next?: QuestionView;
  readonly facts: readonly FactView[];
  readonly contested: readonly ContestedView[];
  readonly up: readonly ChangeView[];
  readonly down: readonly ChangeView[];
  /** Facts that a computation answered, with the check; and facts that the job records, with what it records. */
  readonly worked: readonly { readonly fact: string; readonly by: string; readonly words: string }[];
  readonly recorded: readonly { readonly fact: string; readonly by: string; readonly words: string }[];
  /** What is known otherwise than stated, or by several that do not say the same, as a sentence for each fact. */
  readonly against: readonly { readonly fact: string; readonly words: string }[];
  readonly remedies: readonly { readonly words: string; readonly after: readonly Severity[] }[];
  readonly regulations: readonly string[];
  /** Figures of an opening, where the topic asks what a finger reaches; and the section they describe as SVG. */
  readonly figures: readonly FigureView[];
  readonly section: string | undefined;
  /** Answers that could not be used, by the name of the fact or point. */
  readonly faults: readonly { readonly name: string; readonly words: string }[];
}
