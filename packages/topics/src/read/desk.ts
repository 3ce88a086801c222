import type { Word } from "../document/condition.ts";
import type { Spot, TextFault } from "../text/fault.ts";
import { type Line, spotIn } from "../text/lines.ts";

/** Collects what is wrong with one text while it is read. */
export class Desk {
  readonly file: string;
  readonly faults: TextFault[] = [];
  #within: string[] = [];

  constructor(file: string) {
    this.file = file;
  }

  fault(at: Spot, found: string, expected: string, advice: string): undefined {
    this.faults.push({ file: this.file, at, found, expected, advice, within: [...this.#within] });
    return undefined;
  }

  /** Everything found wrong meanwhile is told as standing in this statement. */
  within<T>(statement: string, read: () => T): T {
    this.#within.push(statement);
    try {
      return read();
    } finally {
      this.#within.pop();
    }
  }

  /** A line whose beginning is known and whose rest is not as it should be. */
  misspelt(
    line: Line,
    expected: string,
    advice = "write it as shown; docs/topics-language.md has an example of each statement",
  ): undefined {
    return this.fault(spotIn(line), `"${short(line.text)}"`, expected, advice);
  }

  /** A line below which nothing may stand. */
  nothingBelow(line: Line): void {
    const [first] = line.below;
    if (first !== undefined)
      this.fault(
        spotIn(first),
        "a line below one that takes none",
        "the same indentation as the line above",
        "take two spaces away",
      );
  }
}

/** The groups of a pattern as words with their places; undefined where the line does not fit. */
export function match(line: Line, pattern: RegExp): Readonly<Record<string, Word | undefined>> | undefined {
  const found = new RegExp(pattern.source, "d").exec(line.text);
  if (found === null) return undefined;
  return Object.fromEntries(
    Object.entries(found.groups ?? {}).map(([name, text]) => {
      const span = found.indices?.groups?.[name];
      return [
        name,
        text === undefined || span === undefined ? undefined : { text, at: spotIn(line, span[0], text.length) },
      ];
    }),
  );
}

/** Words of a list that are parted by a sign or a word, each with its place. */
export function listOf({ text, at }: Word, parted: RegExp): readonly Word[] {
  const words: Word[] = [];
  let start = 0;
  const add = (end: number) => {
    const piece = text.slice(start, end);
    const lead = piece.length - piece.trimStart().length;
    const from = at.from + start + lead;
    const trimmed = piece.trim();
    words.push({ text: trimmed, at: { line: at.line, from, to: from + Math.max(1, trimmed.length) } });
  };
  for (const gap of text.matchAll(new RegExp(parted.source, "g"))) {
    add(gap.index);
    start = gap.index + gap[0].length;
  }
  add(text.length);
  return words;
}

export const COMMA = /\s*,\s*/;
export const OR = /\s+or\s+/;
export const AND = /\s+and\s+/;

export function short(text: string, most = 60): string {
  return text.length > most ? `${text.slice(0, most - 1)}…` : text;
}
