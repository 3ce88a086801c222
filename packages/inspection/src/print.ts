import type { InspectionFile } from "./schema/file.ts";

/** Writes an inspection file: two-space JSON with members in the order they were recorded, ending in a line feed. */
export function printInspection(file: InspectionFile): string {
  return `${JSON.stringify(file, null, 2)}\n`;
}
