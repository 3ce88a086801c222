import type { Effort, Hazard, Provision, Severity } from "@good-grounds/core";
import type { Spot } from "../text/fault.ts";
import type { Condition, Word } from "./condition.ts";

/** A statement of a topic's text: where it stands and the notes in front of it. */
export interface Node {
  readonly at: Spot;
  readonly notes: readonly string[];
}

export interface LinkPart {
  readonly by: Word;
  readonly matter?: Word;
}

/** `answered by`: the computation that answers a fact. */
export interface Link extends Node, LinkPart {
  readonly met: readonly Word[];
  readonly notMet: readonly Word[];
  readonly and: readonly (LinkPart & Node)[];
  readonly findings?: "none" | "not-met-only";
}

/** `recorded as`: what the inspection file says that answers a fact. */
export interface Recorded extends Node {
  readonly property: Word;
  readonly gives: readonly { readonly recorded: Word; readonly values: readonly Word[] }[];
}

export interface Value extends Node {
  readonly name: Word;
  readonly clause: string;
  /** The clause as it is said to whoever ordered the report, where the other is in the words of the trade. */
  readonly plain?: string;
}

interface Asked extends Node {
  readonly name: Word;
  readonly question: string;
  readonly effort: Effort;
  /** What is not known where it stays open, in plain words: "how close live metal is". */
  readonly plain?: string;
  readonly answered?: Link;
  readonly recorded?: Recorded;
}

export interface Fact extends Asked {
  readonly kind: "fact";
  readonly inNoOrder: boolean;
  readonly values: readonly Value[];
  /** Values that no rule, sentence or remedy tells apart, and why they are offered all the same. */
  readonly alike: readonly (Node & { readonly values: readonly Word[]; readonly because: string })[];
  readonly retired: readonly (Node & { readonly value: Word; readonly readAs: Word })[];
}

export interface Amount extends Asked {
  readonly kind: "amount";
  readonly unit: Word;
  readonly worse?: "higher" | "lower";
  readonly called: string;
}

export interface Point extends Node {
  readonly kind: "contested";
  readonly name: Word;
  readonly question: string;
  readonly positions: readonly (Value & { readonly because: string })[];
}

/** What is so of a thing, worked out from facts and never asked; the worst value whose condition holds. */
export interface State extends Node {
  readonly kind: "state";
  readonly name: Word;
  readonly thing: string;
  readonly words: string;
  readonly values: readonly (Value & { readonly when?: Condition })[];
}

export type Holding =
  | { readonly kind: "one-event" }
  | { readonly kind: "as"; readonly state: Word }
  | { readonly kind: "when"; readonly gone?: Condition; readonly sound?: Condition };

export interface LayerNode extends Node {
  readonly name: Word;
  readonly provision: Provision;
  readonly words: string;
  readonly regulations: readonly string[];
  readonly holding: Holding;
}

export interface Route extends Node {
  readonly kind: "route";
  readonly name: Word;
  readonly hazard: Hazard;
  readonly clause: string;
  readonly when?: Condition;
  readonly layers: readonly LayerNode[];
}

export interface DepartureNode extends Node {
  readonly kind: "departure";
  readonly clause: string;
  readonly regulations: readonly string[];
  readonly when: Condition;
}

export interface DangerNode extends Node {
  readonly kind: "danger";
  readonly name: Word;
  readonly least: "C1" | "C2";
  readonly clause: string;
  readonly regulations: readonly string[];
  readonly when: Condition;
}

/** Statements that cannot both be true. */
export interface ContradictionNode extends Node {
  readonly kind: "contradiction";
  readonly clause: string;
  readonly when: Condition;
}

/** A sentence for whoever ordered the report. */
export interface Said extends Node {
  readonly kind: "said";
  readonly under: Severity | "FI";
  readonly words: string;
  readonly when?: Condition;
  readonly unsure: readonly Word[];
}

export interface RemedyNode extends Node {
  readonly kind: "remedy";
  readonly words: string;
  readonly makes: readonly { readonly fact: Word; readonly value: Word }[];
  /** Where it is a remedy at all: nobody fits a device that is already there. */
  readonly fits?: Condition;
}

export interface ExampleFact extends Node {
  readonly fact: Word;
  /** Values of which one is so, or a quantity as written. */
  readonly values: readonly Word[];
}

export interface Example extends Node {
  readonly kind: "example";
  readonly name: string;
  readonly facts: readonly ExampleFact[];
  readonly limited: readonly (Node & { readonly fact: Word; readonly reason: string })[];
  readonly taking: readonly { readonly point: Word; readonly position: Word }[];
  readonly possible: readonly (Severity | "FI")[];
  readonly isFI: boolean;
  readonly open: readonly Word[];
  readonly source: string;
}

/** What the subject itself says of a fact, so that it is not asked. */
export interface Given extends Node {
  readonly kind: "given";
  readonly fact: Word;
  readonly values: readonly Word[];
}

/** A fact that earlier files answer under another name: the values it had and what each says now. */
export interface Formerly extends Node {
  readonly kind: "formerly";
  readonly name: Word;
  /** None where it is no longer asked. */
  readonly fact?: Word;
  readonly values: readonly { readonly former: Word; readonly now: readonly Word[] }[];
}

export type Statement =
  | Fact
  | Amount
  | Point
  | State
  | Route
  | DepartureNode
  | DangerNode
  | ContradictionNode
  | Said
  | RemedyNode
  | Example
  | Given
  | Formerly;

/** A text as read: a topic, what a firm adds to one, or a page of facts, states and contested points that topics share. */
export interface Document extends Node {
  readonly file: string;
  readonly kind: "topic" | "shared" | "more";
  readonly id: Word;
  /** Empty where more is said of a topic. */
  readonly title: string;
  readonly group?: Word;
  /** Its place in the walk through the group; those without one come last. */
  readonly place?: number;
  readonly items: readonly Word[];
  readonly uses: readonly Word[];
  readonly statements: readonly Statement[];
  readonly notesAtEnd: readonly string[];
}
