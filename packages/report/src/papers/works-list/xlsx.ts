import type { ReportInput } from "../../input.ts";
import { WORKS } from "../../locales/works-list-en.ts";
import { seenText } from "../seen-text.ts";
import { workRows } from "./rows.ts";
import { workbookOf } from "./workbook.ts";

/** Widths of the columns in characters, in their order. */
const WIDTHS = [14, 30, 5, 6, 20, 20, 20, 28, 28, 20, 44, 30, 44, 50, 30, 16, 28, 28, 28, 34, 30, 34, 30, 30, 24];

/** The list of works as a workbook of one sheet (XLSX). */
export function worksListXlsx(input: ReportInput): Uint8Array {
  const rows = workRows(input).map((row) => row.map((cell) => (typeof cell === "number" ? cell : seenText(cell))));
  return workbookOf({ name: WORKS.sheet, widths: WIDTHS, rows });
}
