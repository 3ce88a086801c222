import type { Spot, TextFault } from "./fault.ts";

/** A statement of a text with what is indented below it. */
export interface Line {
  readonly number: number;
  /** Spaces in front. */
  readonly indent: number;
  /** Without indentation and trailing space. */
  readonly text: string;
  /** Notes that stand in front of it, without their sign. */
  readonly notes: readonly string[];
  readonly below: readonly Line[];
}

/** As many levels as the language has, with room for conditions within conditions. */
const MOST_LEVELS = 12;
/** Longer lines nobody reads, and longer texts are no topics. */
const MOST_ON_A_LINE = 1000;
const MOST_IN_A_TEXT = 200_000;

interface Open extends Line {
  readonly below: Open[];
}

/** Reads a text into its lines by indentation: two spaces a level. Notes begin with "#". Never throws. */
export function linesOf(
  text: string,
  file: string,
): { readonly lines: readonly Line[]; readonly faults: readonly TextFault[]; readonly notesAtEnd: readonly string[] } {
  if (text.length > MOST_IN_A_TEXT) return { lines: [], faults: [tooLong(text, file)], notesAtEnd: [] };
  const faults: TextFault[] = [];
  const top: Open[] = [];
  const stack: Open[] = [];
  let notes: string[] = [];
  for (const [i, raw] of text
    .replace(/^\uFEFF/, "")
    .split(/\r?\n/)
    .entries()) {
    const trimmed = raw.trim();
    if (trimmed === "") continue;
    if (trimmed.startsWith("#")) {
      notes.push(trimmed.slice(1).trim());
      continue;
    }
    const indent = raw.length - raw.trimStart().length;
    const line: Open = { number: i + 1, indent, text: trimmed, notes, below: [] };
    notes = [];
    const fault = indentFault(raw, line, stack, file);
    if (fault !== undefined) faults.push(fault);
    while (stack.length > 0 && (stack.at(-1) as Open).indent >= indent) stack.pop();
    (stack.at(-1)?.below ?? top).push(line);
    stack.push(line);
  }
  return { lines: top, faults, notesAtEnd: notes };
}

function indentFault(raw: string, line: Line, stack: readonly Line[], file: string): TextFault | undefined {
  const spaces = raw.slice(0, line.indent);
  const above = stack.at(-1);
  const deepest = above === undefined ? 0 : above.indent + 2;
  const at: Spot = { line: line.number, from: 1, to: Math.max(2, line.indent + 1) };
  const fault = (found: string, expected: string): TextFault => ({
    file,
    at,
    found,
    expected,
    advice: "indent by two spaces for each level",
    within: [],
  });
  if (raw.length > MOST_ON_A_LINE)
    return {
      ...fault(`a line of ${raw.length} characters`, `at most ${MOST_ON_A_LINE}`),
      advice: 'say it in fewer words, or put conditions below "all of" or "any of"',
    };
  if (/[^ ]/.test(spaces)) return fault("a tab or another blank in front of the line", "spaces alone");
  if (line.indent % 2 === 1 || line.indent > deepest)
    return fault(`${line.indent} spaces in front of the line`, `at most ${deepest}, and an even number`);
  if (line.indent / 2 > MOST_LEVELS) return fault("too many levels", `at most ${MOST_LEVELS}`);
  return undefined;
}

function tooLong({ length }: string, file: string): TextFault {
  return {
    file,
    at: { line: 1, from: 1, to: 2 },
    found: `a text of ${length} characters`,
    expected: `at most ${MOST_IN_A_TEXT}`,
    advice: "one text is one topic, or one page of what topics share",
    within: [],
  };
}

/** The place of a piece of a line's text, by its position in it. */
export function spotIn(line: Line, start = 0, length = line.text.length - start): Spot {
  const from = line.indent + start + 1;
  return { line: line.number, from, to: from + Math.max(1, length) };
}
