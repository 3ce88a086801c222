import type { Answer, Classification, EditionId, Severity, Verdict } from "@good-grounds/core";
import type { Value } from "../record/entry.ts";

/** An inspection file's data as far as it goes. */
export type Data = { readonly [name: string]: Value };

/** What the engine answers. Every member is one kind of request; arguments and answers are plain data. */
export interface Service {
  /** Weighs a job as far as it goes; later requests about findings are about this one. */
  readonly weigh: (data: Data) => ViewChange;
  /** The argument of one check at one place of what was weighed last; empty where there is none. */
  readonly argument: (path: string, check: string) => readonly Line[];
  /** Drawings of what was weighed last. */
  readonly pictures: () => Promise<Pictures>;
  /** Readings of what was weighed last beside those of earlier inspections. */
  readonly trends: (earlier: readonly Data[]) => Promise<readonly TrendView[]>;
  /** What keeps a job from being finished. */
  readonly check: (data: Data) => readonly Trouble[];
  /** The outcome as far as a job goes, and what stands open. */
  readonly outcome: (data: Data) => Promise<OutcomeView>;
  /** What is worth a second look in one's own figures, held against last time's file where there is one. */
  readonly ownFigures: (data: Data, earlier?: Data) => Promise<readonly ToConfirm[]>;
  /** Arm's reach to one bare part beside a floor. */
  readonly reach: (asked: ReachAsked) => Promise<ReachView>;
  /** The condition report of a complete inspection file as PDF. */
  readonly report: (json: string) => Promise<Uint8Array>;
  /** Subjects an observation may have: those meant by the words, the best first; without words all, from the origin outwards. */
  readonly topics: (words?: string) => Promise<readonly TopicLabel[]>;
  /** The line of reasoning of one topic; findings about the place, from what was weighed last, answer its facts too. */
  readonly reason: (topic: string, facts: Facts, positions: Positions, place?: Where) => Promise<ReasonView>;
}

/** Something that is wrong or missing, with the place of the record it is at. */
export interface Trouble {
  readonly path: string;
  /** The place as people call it: "CU, circuit 4, zs". */
  readonly place: string;
  /** What is wrong or missing, as a plain sentence. */
  readonly words: string;
}

/** The outcome that follows from what is recorded, and what stands open, danger first; each at a place of the record. */
export interface OutcomeView {
  readonly outcome: "satisfactory" | "unsatisfactory" | "not-determined";
  readonly points: readonly { readonly path: string; readonly words: string }[];
  /** How the signatures stand to what is recorded now; empty where nobody signed. */
  readonly signatures: readonly ("signed" | "changed" | "unbound")[];
  /** Choices below what the facts stated give. */
  readonly below: readonly { readonly path: string; readonly words: string }[];
}

/** Something in the inspector's own figures to confirm before somebody else asks. */
export interface ToConfirm {
  readonly check: string;
  readonly title: string;
  /** What is held against what. */
  readonly test: string;
  readonly words: string;
  readonly numbers: readonly string[];
  readonly readings: readonly string[];
  /** How it comes about in honest work. */
  readonly innocent: readonly string[];
  readonly notes: readonly string[];
}

/** A whole job as screens show it. */
export interface View {
  /** What a finished report needs and this job does not have yet. */
  readonly missing: readonly Trouble[];
  /** What could not be read and was left out of the weighing. */
  readonly trouble: readonly Trouble[];
  readonly places: readonly PlaceView[];
}

/** A view as it travels: places that are as they were in the answer before are only named. */
export interface ViewChange extends Omit<View, "places"> {
  readonly order: readonly string[];
  readonly changed: readonly PlaceView[];
}

/** One place of the installation with its findings. */
export interface PlaceView {
  /** As in the record: "boards/cu/circuits/c1". */
  readonly path: string;
  readonly kind: "supply" | "bond" | "board" | "rcd" | "circuit";
  /** As people call it: "CU, circuit 4". */
  readonly name: string;
  /** The worst verdict of its findings; for a circuit those of its own RCD with them. */
  readonly worst: Verdict;
  readonly findings: readonly FindingView[];
}

/** One finding. */
export interface FindingView {
  readonly check: string;
  readonly title: string;
  readonly verdict: Verdict;
  /** The comparison in words, or the facts that decide; empty where nothing can be said. */
  readonly words: string;
  /** The limit in words, "at most 1.37 Ω"; empty where there is none. */
  readonly limit: string;
  /** How far from the limit as a part of it; null where that has no meaning. */
  readonly margin: number | null;
  readonly marginWords: string;
  /** Reading, band and limit on one scale as SVG; empty where there is nothing to draw. */
  readonly bar: string;
  /** What would settle it, by name. */
  readonly missing: readonly string[];
  readonly remarks: readonly string[];
  /** It rests on a figure that is from memory and to be checked. */
  readonly memory: boolean;
}

/** One line of an argument. */
export interface Line {
  readonly depth: number;
  readonly tag: string;
  readonly words: string;
  readonly note: string;
}

export interface Pictures {
  /** The installation from the origin outwards, one SVG for each part. */
  readonly diagram: readonly string[];
  /** Time-current drawings of circuits whose disconnection or fault energy is in doubt. */
  readonly curves: readonly { readonly path: string; readonly name: string; readonly svg: string }[];
  /** Rings with what explains their readings, marked where it lies and in sentences. */
  readonly rings: readonly RingPicture[];
  /** What each sample of the extent leaves possible, in plain words. */
  readonly samples: readonly { readonly what: string; readonly seen: string; readonly leaves: string }[];
}

/** One kind of reading over the years. */
export interface TrendView {
  readonly name: string;
  readonly words: string;
  readonly svg: string;
}

export interface RingPicture {
  readonly path: string;
  readonly name: string;
  readonly svg: string;
  readonly words: readonly string[];
}

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

/** Where a bare part lies beside a floor, all in metres. */
export interface ReachAsked {
  /** Height above the floor; below it where negative. */
  readonly height: number;
  /** Distance beside the edge of the floor; over the floor where negative. */
  readonly beside: number;
  /** Length of the longest thing handled there; 0 where there is none. */
  readonly objects: number;
}

/** What arm's reach makes of it: the answer to what the topic asks, and the elevation as SVG. */
export interface ReachView {
  readonly answer: "beyond" | "long-objects" | "in-reach";
  readonly svg: string;
}

/** A line of reasoning as screens show it. Nothing here is a decision: the person decides. */
export interface ReasonView {
  readonly topic: TopicLabel;
  readonly edition: EditionId;
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

/** A request on its way to the engine. */
export interface Request {
  readonly id: number;
  readonly name: keyof Service;
  readonly args: readonly unknown[];
}

/** What comes back: a value, or why there is none. */
export type Reply = { readonly id: number; readonly value: unknown } | { readonly id: number; readonly failed: string };
