import { strToU8, zipSync } from "fflate";

/** A cell: a text or a number, never a formula. */
type Cell = string | number;

/** A sheet of a workbook, its head in the first row. */
export interface Sheet {
  readonly name: string;
  /** Widths of the columns in characters. */
  readonly widths: readonly number[];
  readonly rows: readonly (readonly Cell[])[];
}

/** Every part of the archive is dated alike, so that the same sheet gives the same bytes. */
const DATED = new Date(1980, 0, 1);

/** Characters that a cell may hold. */
const LONGEST = 32_767;

const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const SHEETS = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const KIND = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const CONTENT = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/**
 * A workbook of one sheet (Office Open XML): texts stand in their cells, so that none can be taken as a formula; the head
 * is bold, stays in sight and is printed on every page. Written here and not by a library, because it is made in a worker
 * of a page that allows no further workers, which those libraries start to pack; and they date every part with the moment.
 */
export function workbookOf({ name, widths, rows }: Sheet): Uint8Array {
  const quoted = `'${name.replaceAll("'", "''")}'`;
  const parts = {
    "[Content_Types].xml": `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${CONTENT}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${CONTENT}.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="${CONTENT}.styles+xml"/></Types>`,
    "_rels/.rels": `<Relationships xmlns="${RELATIONS}"><Relationship Id="r1" Type="${KIND}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${SHEETS}" xmlns:r="${KIND}"><sheets><sheet name="${escaped(name)}" sheetId="1" r:id="r1"/></sheets><definedNames><definedName name="_xlnm.Print_Titles" localSheetId="0">${escaped(quoted)}!$1:$1</definedName></definedNames></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${RELATIONS}"><Relationship Id="r1" Type="${KIND}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="r2" Type="${KIND}/styles" Target="styles.xml"/></Relationships>`,
    "xl/styles.xml": STYLES,
    "xl/worksheets/sheet1.xml": sheetOf(widths, rows),
  };
  const files = Object.fromEntries(Object.entries(parts).map(([path, xml]) => [path, strToU8(XML + xml)]));
  return zipSync(files, { mtime: DATED });
}

/** Styles of cells: 1 for the head, 2 for the others; both wrap and stand at the top. */
const STYLES = [
  `<styleSheet xmlns="${SHEETS}">`,
  '<fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts>',
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>',
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>',
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
  '<cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>',
  ...[1, 0].map(
    (font) =>
      `<xf numFmtId="0" fontId="${font}" fillId="0" borderId="0" xfId="0" applyFont="1" applyAlignment="1"><alignment vertical="top" wrapText="1"/></xf>`,
  ),
  "</cellXfs></styleSheet>",
].join("");

function sheetOf(widths: readonly number[], rows: Sheet["rows"]): string {
  const columns = widths.map((width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`);
  return [
    `<worksheet xmlns="${SHEETS}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>`,
    '<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>',
    `<cols>${columns.join("")}</cols>`,
    `<sheetData>${rows.map(rowOf).join("")}</sheetData>`,
    '<pageSetup paperSize="9" orientation="landscape" fitToWidth="1" fitToHeight="0"/></worksheet>',
  ].join("");
}

function rowOf(cells: readonly Cell[], index: number): string {
  const row = index + 1;
  const style = index === 0 ? 1 : 2;
  return `<row r="${row}">${cells.map((cell, i) => cellOf(cell, `${letters(i)}${row}`, style)).join("")}</row>`;
}

function cellOf(cell: Cell, at: string, style: number): string {
  if (typeof cell === "number") return `<c r="${at}" s="${style}"><v>${cell}</v></c>`;
  if (cell === "") return `<c r="${at}" s="${style}"/>`;
  const text = [...cell].length <= LONGEST ? cell : `${cell.slice(0, LONGEST - 2)} …`;
  return `<c r="${at}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${escaped(text)}</t></is></c>`;
}

/** The letters of a column: A, B … Z, AA. */
function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}

/** Text within XML. Spreadsheets read "_x0041_" as the sign of that code point: its line is written as one itself. */
function escaped(text: string): string {
  return text
    .replaceAll(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
