import type { FactShown } from "@good-grounds/core";
import { CHOICES } from "../../locales/choices-en.ts";

/** Words for a topic, its facts and positions, where whoever renders knows the topic; undefined where it does not. */
export interface ChoiceWords {
  readonly topic: (topic: string) => string | undefined;
  /** What is asked, as a heading of what was answered. */
  readonly fact: (topic: string, fact: string) => string | undefined;
  /** A value as a clause. */
  readonly value: (topic: string, fact: string, value: boolean | string) => string | undefined;
  readonly point: (topic: string, point: string) => string | undefined;
  readonly position: (topic: string, point: string, position: string) => string | undefined;
}

/** A topic nobody knows here goes by the names that were written. */
export const AS_WRITTEN: ChoiceWords = Object.freeze({
  topic: () => undefined,
  fact: () => undefined,
  value: () => undefined,
  point: () => undefined,
  position: () => undefined,
});

/** "burn-marks" as "burn marks": a name of somebody's own that no text explains. */
export function nameWords(name: string): string {
  return name.replaceAll("-", " ");
}

/** A value in words: what was stated, or why nothing was. */
export function valueWords(
  value: FactShown["value"] | null,
  words: (value: boolean | string) => string | undefined,
): string {
  if (value === null) return CHOICES.notRecorded;
  if (typeof value === "boolean") return words(value) ?? (value ? CHOICES.yes : CHOICES.no);
  if (typeof value === "string") return words(value) ?? value;
  return "notKnown" in value ? CHOICES.notKnown : CHOICES.doesNotApply;
}
