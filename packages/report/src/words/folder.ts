import type { FolderOfTopics } from "../input.ts";

/** The firm's own folder of topics that was reasoned with, as results name it. */
export function folderWords({ name, answersFor, hash }: FolderOfTopics): string {
  return `Topics and standing views of ${name}, answered for by ${answersFor}; folder ${hash}.`;
}
