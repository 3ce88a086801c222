import type { ReportInput } from "../../input.ts";
import { seenText } from "../seen-text.ts";
import { workRows } from "./rows.ts";

/** What makes a spreadsheet read a cell as a formula, wide forms and spaces before it included. */
const FORMULA = /^\s*[=+\-@＝＋－＠\t\r]/u;

/**
 * The list of works as CSV by RFC 4180: UTF-8 with its mark, so that spreadsheets read "mm²" right, lines end with CR LF.
 * No cell is taken as a formula: one that begins like one stands behind an apostrophe.
 */
export function worksListCsv(input: ReportInput): string {
  const lines = workRows(input).map((row) =>
    row.map((one) => (typeof one === "number" ? String(one) : cellOf(one))).join(","),
  );
  return `\u{feff}${lines.map((line) => `${line}\r\n`).join("")}`;
}

function cellOf(text: string): string {
  const seen = seenText(text);
  const guarded = FORMULA.test(seen) ? `'${seen}` : seen;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
