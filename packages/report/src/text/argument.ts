import type { Judgement, Path } from "@good-grounds/core";
import { argumentLines } from "../words/argument.ts";
import { wrapped } from "./wrap.ts";

/** The argument of a judgement as indented text; each line starts with its tag in brackets. */
export function renderArgument(
  judgement: Judgement,
  place: (path: Path) => string,
  width: number,
  indent = "",
): string[] {
  return argumentLines(judgement, place).flatMap(({ depth, tag, words, note }) => {
    // Deep arguments keep room for their words.
    const lead = indent + "  ".repeat(Math.min(depth, 12));
    const text = note === "" ? `[${tag}] ${words}` : `[${tag}] ${words} – ${note}`;
    return wrapped(text, width, lead, `${lead}    `);
  });
}
