import { contentHashes as hashesOfFile, parseInspectionData, printInspection } from "@good-grounds/inspection";
import { documentOf } from "../record/document.ts";
import type { Record as JobRecord } from "../record/record.ts";

/** The inspection file of a job as text; undefined while something stops it from being one. */
export function inspectionText(record: JobRecord): string | undefined {
  const parsed = parseInspectionData(documentOf(record));
  return parsed.ok ? printInspection(parsed.file) : undefined;
}

/** The hashes of everything that is signed, today's first; none while something stops the job from being a file. */
export function contentHashes(record: JobRecord): readonly string[] {
  const { signatures: _, ...content } = documentOf(record);
  const parsed = parseInspectionData({ ...content, signatures: [] });
  return parsed.ok ? hashesOfFile(parsed.file) : [];
}
