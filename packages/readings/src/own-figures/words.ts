import type { OwnFiguresNumber } from "@good-grounds/core";
import type { Figure, Row } from "./rows.ts";

/** A number beside what it is. */
export const number = (what: string, value: string): OwnFiguresNumber => ({ what, value });

/** A likelihood ratio in words, from its logarithm: "210,000 times". Beyond a million million it is only said to be so. */
export function timesOf(log: number): string {
  if (log > Math.log(1e12)) return "more than a million million times";
  const ratio = Number(Math.exp(log).toPrecision(2));
  return ratio < 10 ? `${ratio} times` : `${String(Math.round(ratio)).replaceAll(/\B(?=(\d{3})+$)/g, ",")} times`;
}

/** A few names in a sentence; the rest is counted. */
export function named(rows: readonly Pick<Row, "name">[], most = 4): string {
  const names = rows.map(({ name }) => name);
  if (names.length <= most) return listed(names);
  return `${names.slice(0, most).join(", ")} and ${names.length - most} more`;
}

export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** The leaves of figures that are there. */
export const leavesOf = (figures: readonly (Figure | undefined)[]) =>
  figures.flatMap((figure) => (figure === undefined ? [] : [figure.leaf]));
