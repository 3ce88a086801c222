import { bareText, type Document } from "@good-grounds/report/document";
import { fleschKincaid } from "flesch-kincaid";
import { syllable } from "syllable";

/** A word has a letter; figures are read as figures. */
const WORD = /[\p{L}][\p{L}\p{N}'’+-]*/gu;

/** Sentences of a text: they end at a full stop, a question or an exclamation mark, or with their line. */
function sentencesOf(text: string): readonly string[] {
  return text
    .split("\n")
    .flatMap((line) => line.split(/(?<=[.!?])\s+(?=\p{Lu}|$)/u))
    .filter((sentence) => sentence.match(WORD) !== null);
}

/** The reading grade of a text by the formula of Flesch and Kincaid: years of school that it takes to read it. */
export function gradeOfText(text: string): number {
  const sentences = sentencesOf(text);
  const words = sentences.flatMap((sentence) => sentence.match(WORD) ?? []);
  return fleschKincaid({
    sentence: sentences.length,
    word: words.length,
    syllable: words.reduce((sum, word) => sum + syllable(word), 0),
  });
}

/** The reading grade of what a paper says: without its running lines, its title and names and addresses, which nobody chose. */
export function gradeOf({ blocks, ...paper }: Document): number {
  const said = blocks.filter(({ kind }) => kind !== "title" && kind !== "facts");
  return gradeOfText(bareText({ ...paper, blocks: said }).replaceAll(" | ", " "));
}
