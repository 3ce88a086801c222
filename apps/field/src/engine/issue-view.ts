/** A point that has to be answered by a written reason before a report is issued. */
export interface PointToAnswer {
  /** Names it in the statement, the same as long as it stands at the same places. */
  readonly name: string;
  readonly words: string;
}

/** What is to be issued, and with what. */
export interface IssueAsked {
  /** The inspection file as text. */
  readonly json: string;
  readonly reasons: readonly { readonly point: string; readonly words: string }[];
  /** The key file of this device, and what opens it. */
  readonly key: string;
  readonly passphrase: string;
  /** The firm's register of keys, where one is kept here. */
  readonly register: string | undefined;
  /** The records of everything that was issued on this device. */
  readonly before: readonly string[];
  /** UTC, to the second. */
  readonly at: string;
}

/** An issue as it was made; or why there is none. */
export type IssueMade =
  | {
      readonly made: true;
      readonly report: string;
      readonly number: number;
      /** A name for its files. */
      readonly name: string;
      readonly document: Uint8Array;
      readonly record: string;
    }
  | { readonly made: false; readonly why: readonly string[] };

/** A file handed in to be checked. */
export interface FileToCheck {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** One of the five answers on a document. */
interface AnswerView {
  readonly question: string;
  readonly standing: "holds" | "against" | "open";
  readonly words: readonly string[];
}

/** What was found at one document. */
export interface CheckedView {
  readonly name: string;
  /** What it says it is; undefined where it carries no statement. */
  readonly says: string | undefined;
  readonly answers: readonly AnswerView[];
  /** Points that stood open when it was issued, with the reason. */
  readonly reasons: readonly { readonly point: string; readonly words: string }[];
}

export interface CheckedFiles {
  readonly documents: readonly CheckedView[];
  /** Files that could not be read, and why. */
  readonly unread: readonly string[];
  /** What no answer says. */
  readonly notShown: readonly string[];
}

/** What everybody may know of the key of this device. */
export interface KeyView {
  readonly key: string;
  readonly person: string;
  readonly device: string;
  readonly made: string;
  /** Its public part as a file, for the register of the firm. */
  readonly publicPart: string;
}

/** What a register of keys says of itself; or why it is not taken. */
export type RegisterTried =
  | { readonly isWell: true; readonly root: string; readonly number: number; readonly keys: number }
  | { readonly isWell: false; readonly why: string };
