import { type ChoiceMade, CLASSIFICATIONS, type Classification } from "@good-grounds/core";
import { CHOICES } from "../../locales/choices-en.ts";
import { padded, wrapped } from "../wrap.ts";

/** A column narrower than this breaks every second word. */
const NARROWEST = 22;
const GAP = 2;

/** Choices of one classification. */
interface Chosen {
  readonly classification: Classification;
  /** Newest first: what somebody chose last says most about what they would choose again. */
  readonly choices: readonly ChoiceMade[];
}

/** Who chose what, when, where and why: a column for each classification, or under each other where there is no room. */
export function choicesBeside(choices: readonly ChoiceMade[], width: number, indent: string, most: number): string[] {
  const chosen = byClassification(choices);
  const each = Math.floor((width - indent.length + GAP) / chosen.length) - GAP;
  if (chosen.length < 2 || each < NARROWEST) return chosen.flatMap((one) => lines(one, width, indent, most));
  const blocks = chosen.map((one) => lines(one, each, "", most));
  const height = Math.max(...blocks.map(({ length }) => length));
  return Array.from({ length: height }, (_, i) =>
    `${indent}${blocks.map((block) => padded(block[i] ?? "", each)).join(" ".repeat(GAP))}`.trimEnd(),
  );
}

/** The same under each other. */
export function choicesBelow(choices: readonly ChoiceMade[], width: number, indent: string, most: number): string[] {
  return byClassification(choices).flatMap((one) => lines(one, width, indent, most));
}

function byClassification(choices: readonly ChoiceMade[]): readonly Chosen[] {
  return CLASSIFICATIONS.map((classification) => ({
    classification,
    choices: choices.filter((choice) => choice.classification === classification).reverse(),
  })).filter((one) => one.choices.length > 0);
}

function lines({ classification, choices }: Chosen, width: number, indent: string, most: number): string[] {
  const shown = choices.slice(0, most);
  const inner = `${indent}  `;
  return [
    ...wrapped(CHOICES.times(classification, choices.length), width, indent),
    ...shown.flatMap(({ by, date, file, observation, reason }) => [
      ...wrapped(`${by}, ${date}`, width, inner),
      ...wrapped(CHOICES.where(file, observation), width, inner),
      ...wrapped(reason, width, `${inner}  `),
    ]),
    ...(choices.length > most ? wrapped(CHOICES.more(choices.length - most), width, inner) : []),
  ];
}
