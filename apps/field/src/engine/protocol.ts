import type { Value } from "../record/entry.ts";
import type { DutiesView } from "./duties-view.ts";
import type { FolderText, FolderTried, KeptFolder } from "./folder-view.ts";
import type {
  CheckedFiles,
  FileToCheck,
  IssueAsked,
  IssueMade,
  KeyView,
  PointToAnswer,
  RegisterTried,
} from "./issue-view.ts";
import type { MisfitView } from "./misfit-view.ts";
import type { OutcomeView, ToConfirm } from "./outcome-view.ts";
import type { PaperForm, PaperKind } from "./paper-view.ts";
import type { Pictures, TrendView } from "./picture-view.ts";
import type { ReachAsked, ReachView } from "./reach-view.ts";
import type { Facts, Positions, ReasonView, TopicLabel, Where } from "./reason-view.ts";
import type { Line, Trouble, ViewChange } from "./view.ts";

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
  /** Readings that do not agree, in a job as far as it goes. */
  readonly misfits: (data: Data) => Promise<readonly MisfitView[]>;
  /** What the law asks because of a job as far as it goes. */
  readonly duties: (data: Data) => Promise<DutiesView>;
  /** What is worth a second look in one's own figures, held against last time's file where there is one. */
  readonly ownFigures: (data: Data, earlier?: Data) => Promise<readonly ToConfirm[]>;
  /** Arm's reach to one bare part beside a floor. */
  readonly reach: (asked: ReachAsked) => Promise<ReachView>;
  /** The condition report of a complete inspection file as PDF. */
  readonly report: (json: string) => Promise<Uint8Array>;
  /** The open points of a complete inspection file that each need a reason before it is issued. */
  readonly pointsToAnswer: (json: string) => Promise<readonly PointToAnswer[]>;
  /** Issues a report: signed, with its statement, read back. */
  readonly issue: (asked: IssueAsked) => Promise<IssueMade>;
  /** The five answers on every issued document among files, with the public root of the firm where it is known. */
  readonly checkIssued: (files: readonly FileToCheck[], root?: string) => Promise<CheckedFiles>;
  /** A new key for a person on this device, encrypted under a passphrase, as text. */
  readonly makeKey: (person: string, device: string, passphrase: string, made: string) => Promise<string>;
  /** What everybody may know of a key file. */
  readonly keyView: (text: string) => Promise<KeyView>;
  /** Reads a firm's register of keys. */
  readonly tryRegister: (text: string) => Promise<RegisterTried>;
  /** A paper for one reader from a complete inspection file. */
  readonly paper: (kind: PaperKind, form: PaperForm, json: string) => Promise<Uint8Array | string>;
  /** Subjects an observation may have: those meant by the words, the best first; without words all, from the origin outwards. */
  readonly topics: (words?: string) => Promise<readonly TopicLabel[]>;
  /** The line of reasoning of one topic; findings about the place, from what was weighed last, answer its facts too. */
  readonly reason: (topic: string, facts: Facts, positions: Positions, place?: Where) => Promise<ReasonView>;
  /** Reads a firm's folder of topics and standing views and holds it to every law. Nothing is used of it yet. */
  readonly tryFolder: (texts: readonly FolderText[]) => Promise<FolderTried>;
  /** From now on, topics are reasoned with under this folder; with the app's own alone where there is none. */
  readonly useFolder: (kept: KeptFolder | undefined) => Promise<void>;
}

/** A request on its way to the engine. */
export interface Request {
  readonly id: number;
  readonly name: keyof Service;
  readonly args: readonly unknown[];
}

/** What comes back: a value, or why there is none. */
export type Reply = { readonly id: number; readonly value: unknown } | { readonly id: number; readonly failed: string };
