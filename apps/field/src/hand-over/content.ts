import { parseInspectionData, printInspection } from "@good-grounds/inspection";
import { documentOf } from "../record/document.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { hashOf } from "./hash.ts";

/** The inspection file of a job as text; undefined while something stops it from being one. */
export function inspectionText(record: JobRecord): string | undefined {
  const parsed = parseInspectionData(documentOf(record));
  return parsed.ok ? printInspection(parsed.file) : undefined;
}

/** The hash of everything that is signed: the inspection without its signatures. It changes with any change. */
export async function contentHash(record: JobRecord): Promise<string | undefined> {
  const { signatures: _, ...content } = documentOf(record);
  const parsed = parseInspectionData({ ...content, signatures: [] });
  return parsed.ok ? hashOf(new TextEncoder().encode(printInspection(parsed.file))) : undefined;
}
