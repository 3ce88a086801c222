import type { Issue } from "@good-grounds/core";
import { droppedMembers } from "./dropped.ts";
import { schemaIssues } from "./issues.ts";
import { type InspectionFile, inspectionFile } from "./schema/file.ts";

/** What the schema makes of a document: the file, or what is wrong with it. */
export type BySchema =
  | { readonly file: InspectionFile; readonly issues: readonly Issue[] }
  | { readonly file: undefined; readonly issues: readonly Issue[] };

/**
 * Reads a document of today's version through the schema, which knows what is wrong and where. Most files plainly fit and
 * never come here; the command line loads the schema for those that do.
 */
export function bySchema(document: unknown): BySchema {
  const result = inspectionFile.safeParse(document);
  return result.success
    ? { file: result.data, issues: droppedMembers(document, result.data) }
    : { file: undefined, issues: schemaIssues(result.error, document) };
}
