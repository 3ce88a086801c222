import type { Word } from "./condition.ts";
import type { Node } from "./document.ts";

/** `folder.topics`: whose folder it is, and which knowledge it was written against. */
export interface FolderNode extends Node {
  readonly name: string;
  /** The release of the topics of this package, as {@link ownRelease} gives it. */
  readonly release: Word;
  readonly answersFor: string;
}

/** A standing view as written in `views.topics`. */
export interface ViewNode extends Node {
  readonly point: Word;
  /** None where it holds in every topic that has the point. */
  readonly topic?: Word;
  readonly position: Word;
  readonly since: Word;
  readonly by: string;
  readonly because: string;
}
