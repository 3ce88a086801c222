import type { FolderLabel } from "@good-grounds/topics";

/** A text of a firm's folder, by its path in there. */
export interface FolderText {
  readonly file: string;
  readonly text: string;
}

/** A firm's folder as it is kept on the device. */
export interface KeptFolder {
  readonly texts: readonly FolderText[];
  /** What results call it; the hash is that of the texts. */
  readonly label: FolderLabel;
  /** The release of the app's own topics beside which every law was proved. */
  readonly provedBeside: string;
}

/** What came of reading a folder and holding it to every law: all of it can be used, or none. */
export type FolderTried =
  | {
      readonly isWell: true;
      readonly kept: KeptFolder;
      /** What is in it, in words. */
      readonly words: string;
      /** The release it says it was written against, where that is another than the app's. */
      readonly writtenAgainst?: string;
    }
  | { readonly isWell: false; readonly problems: readonly string[] };
