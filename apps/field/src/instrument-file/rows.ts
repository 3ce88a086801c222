import Papa from "papaparse";

/** A line of the file as it stands: nothing is dropped, whatever it holds. */
export interface Row {
  /** Counted from 1 as an editor counts. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** A file of readings as rows and columns. */
export interface Sheet {
  readonly header: readonly string[];
  readonly rows: readonly Row[];
  readonly columns: number;
  /** What could not be read as it should, by line. */
  readonly faults: readonly string[];
}

/** More rows than any instrument holds; the file is refused rather than half read. */
const MOST_ROWS = 20_000;

/** Reads separated values of any usual separator. The first line with words in most cells is taken as the header. */
export function sheetOf(text: string): Sheet | undefined {
  const { data, errors } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ""), { skipEmptyLines: false });
  if (data.length > MOST_ROWS) return undefined;
  const all = data.map((cells, i) => ({ line: i + 1, cells: cells.map((cell) => cell.trim()) }));
  const filled = all.filter(({ cells }) => cells.some((cell) => cell !== ""));
  const head = filled.findIndex(({ cells }) => isHeader(cells));
  const columns = Math.max(0, ...filled.map(({ cells }) => cells.length));
  const header = head < 0 ? [] : (filled[head]?.cells ?? []);
  return {
    header: Array.from({ length: columns }, (_, i) => header[i] || `column ${i + 1}`),
    // Lines above the header (a title, a serial number) stay rows like the others.
    rows: filled.filter((_, i) => i !== head),
    columns,
    faults: errors.slice(0, 50).map(({ row, message }) => `line ${(row ?? 0) + 1}: ${message}`),
  };
}

function isHeader(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== "");
  return (
    filled.length >= 2 &&
    filled.filter((cell) => /\p{L}/u.test(cell) && !/^[<>]?\s*\d/.test(cell)).length > filled.length * 0.7
  );
}
