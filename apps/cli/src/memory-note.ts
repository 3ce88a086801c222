import type { ReportInput } from "@good-grounds/report";

/**
 * Figures from memory that conclusions rest on, for the inspector to check before the report is issued; empty where there
 * are none. No page of the report says so to its reader.
 */
export async function memoryNote(path: string, input: ReportInput): Promise<string> {
  const { fromMemory } = await import("@good-grounds/report/pdf/document");
  const figures = fromMemory(input);
  if (figures.length === 0) return "";
  const lines = figures.map((figure) => `  ${figure}\n`).join("");
  return `${path}: conclusions rest on figures from memory. Check them against the standard before the report is issued:\n${lines}`;
}
