import { unzipSync, zipSync } from "fflate";
import type { SheetData } from "write-excel-file/universal";
import writeXlsxFile from "write-excel-file/universal";
import type { ReportInput } from "../../input.ts";
import { WORKS } from "../../locales/works-list-en.ts";
import { seenText } from "../seen-text.ts";
import { type WorkCell, workRows } from "./rows.ts";

/** Characters that a cell may hold. */
const LONGEST_CELL = 32_000;

/** Widths of the columns in characters, in their order. */
const WIDTHS = [14, 30, 5, 6, 20, 20, 20, 28, 28, 20, 44, 30, 44, 50, 30, 16, 28, 28, 28, 34, 30, 34, 30, 30, 24];

/** Every file of an archive is dated alike, so that the same list gives the same bytes. */
const DATED = new Date(1980, 0, 1);

/** The list of works as a workbook of one sheet (XLSX): every text a text, never a formula; the head stays in sight. */
export async function worksListXlsx(input: ReportInput): Promise<Uint8Array> {
  const [head = [], ...rows] = workRows(input);
  const data: SheetData = [
    head.map((name) => ({ value: String(name), fontWeight: "bold", wrap: true, alignVertical: "top" })),
    ...rows.map((row) => row.map(cellOf)),
  ];
  const written = await writeXlsxFile(data, {
    sheet: WORKS.sheet,
    columns: WIDTHS.map((width) => ({ width })),
    stickyRowsCount: 1,
    orientation: "landscape",
  }).toBlob();
  const files = unzipSync(new Uint8Array(await written.arrayBuffer()));
  return zipSync(files, { mtime: DATED });
}

function cellOf(value: WorkCell) {
  if (typeof value === "number") return { value, type: Number, alignVertical: "top" } as const;
  if (value === "") return null;
  return { value: fitting(seenText(value)), type: String, wrap: true, alignVertical: "top" } as const;
}

function fitting(text: string): string {
  return text.length <= LONGEST_CELL ? text : `${text.slice(0, LONGEST_CELL)} …`;
}
