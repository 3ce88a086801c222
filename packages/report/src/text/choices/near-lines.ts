import type { ChoiceSet, NearDifference } from "@good-grounds/core";
import { CHOICES } from "../../locales/choices-en.ts";
import { wrapped } from "../wrap.ts";
import { choicesBelow } from "./choice-lines.ts";
import { type ChoiceWords, nameWords, valueWords } from "./choice-words.ts";
import { factLines } from "./fact-lines.ts";

/** Choices of one classification shown for each value; the rest is counted. */
const MOST_SHOWN = 2;

/** Sets of facts alike but for one: what is alike, then each value of the one with what was chosen. */
export function nearLines(
  { differs, members }: NearDifference,
  sets: readonly ChoiceSet[],
  number: number,
  words: ChoiceWords,
  width: number,
): string[] {
  const found = members.flatMap(({ set, value }) => {
    const one = sets[set];
    return one === undefined ? [] : [{ one, value }];
  });
  const [first] = found;
  if (first === undefined) return [];
  const { topic, facts, positions } = first.one;
  const alike = {
    topic,
    facts: facts.filter(({ name }) => differs.kind !== "fact" || name !== differs.name),
    positions: positions.filter(({ point }) => differs.kind !== "position" || point !== differs.name),
  };
  const common = factLines(alike, words, width, "   ");
  const isFact = differs.kind === "fact";
  const name = (isFact ? words.fact : words.point)(topic, differs.name) ?? nameWords(differs.name);
  const said = (value: boolean | string) =>
    isFact ? words.value(topic, differs.name, value) : words.position(topic, differs.name, String(value));
  return [
    ...wrapped(CHOICES.apart(words.topic(topic) ?? nameWords(topic), differs.kind, name), width, `${number}  `, "   "),
    ...(common.length === 0 ? [`   ${CHOICES.nothingElse}`] : common),
    ...found.flatMap(({ one, value }) => [
      ...wrapped(valueWords(value, said), width, "   - ", "     "),
      ...choicesBelow(one.choices, width, "     ", MOST_SHOWN),
    ]),
  ];
}
