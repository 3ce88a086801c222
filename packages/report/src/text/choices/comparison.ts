import type { ChoiceComparison, ChoiceSet } from "@good-grounds/core";
import { CHOICES } from "../../locales/choices-en.ts";
import { WORDS } from "../../locales/en.ts";
import { wrapped } from "../wrap.ts";
import { agreementLines } from "./agreement-lines.ts";
import { choicesBeside } from "./choice-lines.ts";
import { AS_WRITTEN, type ChoiceWords, nameWords } from "./choice-words.ts";
import { factLines } from "./fact-lines.ts";
import { nearLines } from "./near-lines.ts";

/** Choices of one classification shown for one set of facts; the rest is counted. */
const MOST_SHOWN = 6;

export interface ChoicesOptions {
  readonly width: number;
  /** Files that were named but could not be used. */
  readonly unused: number;
  /** Sets of facts two need in common for a figure of their own. */
  readonly least: number;
  /** Words of the topics; names as they were written where left out. */
  readonly words?: ChoiceWords;
}

/** Choices of classification held against each other, for a terminal. */
export function renderChoices(
  comparison: ChoiceComparison,
  { width, unused, least, words = AS_WRITTEN }: ChoicesOptions,
): string {
  const { count, sets, differences, near, agreement } = comparison;
  const none = count.judgedAgain === 0 ? CHOICES.noneAgain : CHOICES.noDifference;
  const lines = [
    ...[
      CHOICES.compared(count),
      CHOICES.leftOut(count),
      unused > 0 ? CHOICES.unused(unused) : "",
      CHOICES.factSets(count),
      count.tooManyFacts > 0 ? CHOICES.tooManyFacts(count.tooManyFacts) : "",
      count.invented > 0 ? CHOICES.invented : "",
    ].flatMap((line) => (line === "" ? [] : wrapped(line, width))),
    ...section(CHOICES.differences(differences.length, count.judgedAgain), width),
    ...(differences.length === 0 ? wrapped(none, width) : []),
    ...differences.flatMap((set, i) => {
      const one = sets[set];
      return one === undefined ? [] : [...(i === 0 ? [] : [""]), ...differenceLines(one, i + 1, words, width)];
    }),
    ...section(`${CHOICES.near} (${near.length})`, width),
    ...wrapped(near.length === 0 ? CHOICES.noNear : CHOICES.nearMeans, width),
    ...near.flatMap((one, i) => ["", ...nearLines(one, sets, differences.length + i + 1, words, width)]),
    ...section(CHOICES.agreement, width),
    ...agreementLines(agreement, least, width),
    "",
    ...wrapped(WORDS.competent, width),
  ];
  return `${lines.join("\n")}\n`;
}

function section(heading: string, width: number): string[] {
  return ["", ...wrapped(heading, width), "─".repeat(width)];
}

function differenceLines(set: ChoiceSet, number: number, words: ChoiceWords, width: number): string[] {
  const editions = [...new Set(set.choices.map(({ edition }) => edition))].sort();
  return [
    ...wrapped(words.topic(set.topic) ?? nameWords(set.topic), width, `${number}  `, "   "),
    ...factLines(set, words, width, "   "),
    ...(editions.length > 1 ? wrapped(CHOICES.editions(editions), width, "   ") : []),
    "",
    ...choicesBeside(set.choices, width, "   ", MOST_SHOWN),
  ];
}
