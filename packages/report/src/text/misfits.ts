import type { Misfit } from "@good-grounds/core";
import { MISFITS } from "../locales/misfits-en.ts";
import { type MisfitWords, misfitTitle, misfitWords } from "../words/misfit.ts";
import { wrapped } from "./wrap.ts";

/** Readings that do not agree, for a terminal: those that are clear, with `all` the others too. Nothing where there is none. */
export function misfitLines(misfits: readonly Misfit[], width: number, all: boolean): string[] {
  const shown = all ? misfits : misfits.filter(({ clear }) => clear);
  if (shown.length === 0) return [];
  const indent = " ".repeat(4);
  const lines = [MISFITS.title, "─".repeat(width), ...wrapped(MISFITS.intro, width, "  ")];
  for (const misfit of shown) {
    const said = misfitWords(misfit);
    lines.push("", ...wrapped(misfitTitle(misfit), width, "  "));
    for (const reading of said.readings) lines.push(...wrapped(reading, width, indent, `${indent}  `));
    for (const one of all
      ? [...said.explanations, ...said.next, said.rule, ...said.assumed, said.innocent]
      : brief(said)) {
      lines.push(...wrapped(one, width, indent, `${indent}  `));
    }
  }
  const left = misfits.length - shown.length;
  if (left > 0) lines.push("", ...wrapped(MISFITS.more(left), width, "  "));
  return [...lines, ""];
}

/** The leading explanation with whatever cannot be told from it, and what to read next. */
function brief({ explanations, tied, next, innocent }: MisfitWords): readonly string[] {
  return [...explanations.slice(0, tied), ...next, innocent];
}
