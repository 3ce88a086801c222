import type { InspectionFile } from "./schema/file.ts";

/**
 * The file as others may have it: without what the inspector wrote to a check of their own figures. The same file where
 * there is nothing of the kind.
 */
export function forOthers(file: InspectionFile): InspectionFile {
  if (file.ownFigures === undefined) return file;
  const { ownFigures, ...rest } = file;
  return rest;
}
