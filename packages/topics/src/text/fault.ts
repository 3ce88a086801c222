/** Where something stands in a text: line and columns from 1, `to` behind the last character. */
export interface Spot {
  /** The text it stands in, where what is read together comes from several. */
  readonly file?: string;
  readonly line: number;
  readonly from: number;
  readonly to: number;
}

/** Something in a text that cannot be read or does not hold: where, what was found, what may stand there, what to do. */
export interface TextFault {
  readonly file: string;
  readonly at: Spot;
  /** A clause: `nothing here is called "gapp"`. */
  readonly found: string;
  readonly expected: string;
  readonly advice: string;
  /** The statements it stands in, from the outside in: `route touch`, `layer enclosure`. */
  readonly within: readonly string[];
  /** Other lines with the same fault, where a name that is spelt wrongly is used again. */
  readonly also?: readonly number[];
}

/** As much of a line as is shown. */
const MOST_SHOWN = 1000;

/**
 * Faults with one cause as one: what was found, expected and advised is the same in the same text. Lines further down are
 * named beside the first.
 */
export function together(faults: readonly TextFault[]): readonly TextFault[] {
  const told = new Map<string, TextFault>();
  for (const fault of faults) {
    const key = JSON.stringify([fault.file, fault.found, fault.expected, fault.advice]);
    const first = told.get(key);
    if (first === undefined) told.set(key, fault);
    else {
      const lines = new Set([...(first.also ?? []), fault.at.line, ...(fault.also ?? [])]);
      lines.delete(first.at.line);
      told.set(key, lines.size === 0 ? first : { ...first, also: [...lines] });
    }
  }
  return [...told.values()];
}

/** A fault as lines for a terminal: the place, the line itself with what is meant marked, and what may stand there. */
export function faultText({ file, at, found, expected, advice, within, also = [] }: TextFault, text: string): string {
  const line = (text.replace(/^\uFEFF/, "").split(/\r?\n/)[at.line - 1] ?? "").slice(0, MOST_SHOWN);
  const mark =
    " ".repeat(Math.max(0, Math.min(at.from, MOST_SHOWN) - 1)) +
    "^".repeat(Math.max(1, Math.min(at.to, MOST_SHOWN) - at.from));
  return [
    `${file}:${at.line}:${at.from}  ${found}`,
    `  ${line}`,
    `  ${mark}`,
    ...(within.length > 0 ? [`  in ${within.join(", in ")}`] : []),
    `  expected: ${expected}`,
    `  ${advice}`,
    ...(also.length > 0 ? [`  the same on ${also.length === 1 ? "line" : "lines"} ${also.join(", ")}`] : []),
  ].join("\n");
}
