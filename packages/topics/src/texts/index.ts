/** Reading, printing and formatting texts: what commands and tests need, and a program that only reasons does not. */
export type * from "../document/condition.ts";
export type * from "../document/document.ts";
export { type ClassChange, changesOf, type TopicChange } from "../folder/changes.ts";
export { hashOf, releaseOf } from "../folder/hash.ts";
export { type Folder, readFolder } from "../folder/read-folder.ts";
export { type Library, readLibrary } from "../library.ts";
export { printDocument } from "../print/document.ts";
export { formatted } from "../print/format.ts";
export { readDocument } from "../read/document.ts";
export { sharedOf } from "../resolve/shared.ts";
export { topicOf } from "../resolve/topic.ts";
export { faultText, type Spot, type TextFault } from "../text/fault.ts";
export { ownTexts, type Text } from "../texts.js";
