import type { InspectionFile } from "./schema/file.ts";

/** Writes an inspection file: two-space JSON ending in a line feed. A parsed file has its members in the
 * order of the schema, so that equal files print to equal bytes. */
export function printInspection(file: InspectionFile): string {
  return `${JSON.stringify(file, null, 2)}\n`;
}
