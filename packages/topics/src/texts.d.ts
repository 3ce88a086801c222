/** A text as it stands in the folder `text`, by its path in there. */
export interface Text {
  readonly file: string;
  readonly text: string;
}

/** Every text of this package, in the order of their paths. A built program carries the topics instead; see the build. */
export declare function ownTexts(): readonly Text[];
