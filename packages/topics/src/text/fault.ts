/** Where something stands in a text: line and columns from 1, `to` behind the last character. */
export interface Spot {
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

/** A fault as lines for a terminal: the place, the line itself with what is meant marked, and what may stand there. */
export function faultText({ file, at, found, expected, advice, within, also = [] }: TextFault, text: string): string {
  const line = text.split(/\r?\n/)[at.line - 1] ?? "";
  const mark = " ".repeat(Math.max(0, at.from - 1)) + "^".repeat(Math.max(1, at.to - at.from));
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
