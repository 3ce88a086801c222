import type { Record as JobRecord } from "../../record/record.ts";

/** The name that stands at a place of the record, or what is said where none does. */
export function called(record: JobRecord, path: string, otherwise: string): string {
  const name = record.value(path);
  return typeof name === "string" ? name : otherwise;
}
