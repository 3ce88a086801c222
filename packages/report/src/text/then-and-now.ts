import type { AgainstEarlier, ThenAndNow } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { EARLIER } from "../locales/earlier-en.ts";
import { argumentLines } from "../words/argument.ts";
import { placeWords } from "../words/place.ts";
import {
  changeLines,
  countWords,
  dividedLines,
  hasChanged,
  leftOver,
  matchedWords,
  matchLines,
  methodWords,
  restsOn,
  trendLines,
} from "../words/then-and-now.ts";
import { padded, wrapped } from "./wrap.ts";

const LABEL = 8;

/** The comparison with earlier inspections for a terminal, the latest first. Changes and what is left open; with `all` every reading. */
export function renderThenAndNow(
  comparison: ThenAndNow,
  installation: Installation,
  { width, all, grounds }: { readonly width: number; readonly all: boolean; readonly grounds: boolean },
): string[] {
  const lines = [EARLIER.title, "─".repeat(width)];
  for (const against of [...comparison.earlier].reverse())
    lines.push(...againstLines(against, installation, width, all, grounds), "");
  lines.push(...trendSection(comparison, installation, width, all));
  lines.push(...wrapped(methodWords(comparison), width, "  "));
  return lines;
}

function againstLines(
  against: AgainstEarlier,
  installation: Installation,
  width: number,
  all: boolean,
  grounds: boolean,
) {
  const lines = wrapped(EARLIER.against(against.inspectedOn, against.id), width);
  lines.push(...wrapped(matchedWords(against), width, "  "));
  if (against.otherAddress) lines.push(...wrapped(EARLIER.otherAddress, width, "  "));
  if (against.byNameOnly) lines.push(...wrapped(EARLIER.byNameOnly, width, "  "));
  const changes = changeLines(against, installation);
  lines.push(...wrapped(countWords(changes), width, "  "));
  const indent = " ".repeat(LABEL + 2);
  for (const one of changes) {
    if (!all && !hasChanged(one)) continue;
    const { where, label, past, now, words, change } = one;
    const head = `  ${padded(EARLIER.changeShort[change.change], LABEL)}`;
    lines.push(...wrapped(`${where}, ${label}: ${past} → ${now}`, width, head, indent));
    lines.push(...wrapped(words, width, indent));
    if (!grounds) continue;
    for (const side of [change.past, change.now]) {
      for (const { depth, tag, words: says } of argumentLines(side, (path) => placeWords(path, installation)))
        lines.push(...wrapped(`[${tag}] ${says}`, width, `${indent}${"  ".repeat(Math.min(12, depth + 1))}`));
    }
  }
  const rest = restsOn(all ? changes : changes.filter(hasChanged));
  if (rest !== "") lines.push(...wrapped(rest, width, "  "));
  if (all) for (const words of matchLines(against)) lines.push(...wrapped(words, width, "  ", "    "));
  for (const words of dividedLines(against)) lines.push(...wrapped(words, width, "  ", "    "));
  for (const [label, words] of leftOver(against)) lines.push(...wrapped(`${label}: ${words}`, width, "  ", "    "));
  return lines;
}

function trendSection(comparison: ThenAndNow, installation: Installation, width: number, all: boolean): string[] {
  const trends = trendLines(comparison, installation);
  if (trends.length === 0) return [];
  const shown = all ? trends : trends.filter(({ notable }) => notable);
  const lines: string[] = [EARLIER.trends];
  if (comparison.nextOn === null) lines.push(...wrapped(EARLIER.noNext, width, "  "));
  for (const { where, label, history, says } of shown) {
    lines.push(...wrapped(`${where}, ${label}: ${history}`, width, "  ", "    "));
    for (const words of says) lines.push(...wrapped(words, width, "    "));
  }
  if (shown.length < trends.length)
    lines.push(...wrapped(EARLIER.moreTrends(trends.length - shown.length), width, "  "));
  return [...lines, ""];
}
