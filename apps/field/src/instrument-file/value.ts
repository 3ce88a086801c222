import { isFault, parseWritten, SCALES } from "@good-grounds/core";

/** A cell as a reading, or why it is none. */
export type CellValue = { readonly shown: string } | { readonly because: "empty" | "not-a-reading" };

const BEYOND = /^(?:o\.?l\.?|over|overrange|inf|∞|---+)$/i;

/**
 * The reading in a cell, with its unit: a decimal comma becomes a point, ">999" and "<0.05" stay what they are, "OL" is a
 * display beyond its range and needs `range` to be written. A unit in the cell goes before that of the column.
 */
export function readingIn(cell: string, unit: string, range?: string): CellValue {
  const text = cell.trim().replaceAll("\u00a0", " ");
  if (text === "" || /^(?:n\/?[av]|-|–)$/i.test(text)) return { because: "empty" };
  if (BEYOND.test(text)) return range === undefined ? { because: "not-a-reading" } : written(`>${range}`, unit);
  const [, sign = "", number = "", plus = "", own = ""] =
    /^([<>≥≤]?)\s*([\d.,' ]*\d)\s*(\+?)\s*(\D*)$/u.exec(text) ?? [];
  if (number === "") return { because: "not-a-reading" };
  const bound = plus === "+" || sign === "≥" ? ">" : sign === "≤" ? "<" : sign;
  return written(`${bound}${decimal(number)}`, own.trim().replace(/^ohms?$/i, "Ω") || unit);
}

function written(number: string, unit: string): CellValue {
  const scale = SCALES.get(unit);
  if (scale === undefined) return { because: "not-a-reading" };
  const shown = `${number} ${unit}`.trim();
  return isFault(parseWritten(shown, scale.unit)) ? { because: "not-a-reading" } : { shown };
}

/** One separator is a decimal one unless it can only part thousands; of two kinds the last is the decimal one. */
function decimal(number: string): string {
  const plain = number.replaceAll(/[' ]/g, "");
  const [comma, point] = [plain.lastIndexOf(","), plain.lastIndexOf(".")];
  if (comma < 0) return plain;
  if (point < 0) return plain.split(",").length > 2 ? plain.replaceAll(",", "") : plain.replace(",", ".");
  return comma > point ? plain.replaceAll(".", "").replace(",", ".") : plain.replaceAll(",", "");
}
