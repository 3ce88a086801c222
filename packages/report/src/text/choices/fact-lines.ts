import type { FactSet } from "@good-grounds/core";
import { CHOICES } from "../../locales/choices-en.ts";
import { columns, padded, wrapped } from "../wrap.ts";
import { type ChoiceWords, nameWords, valueWords } from "./choice-words.ts";

/** Facts and positions, one a line, the values under each other where there is room. */
export function factLines(
  { topic, facts, positions }: FactSet,
  words: ChoiceWords,
  width: number,
  indent: string,
): string[] {
  const rows = [
    ...facts.map(
      ({ name, value }) =>
        [
          words.fact(topic, name) ?? nameWords(name),
          valueWords(value, (one) => words.value(topic, name, one)),
        ] as const,
    ),
    ...positions.map(
      ({ point, position }) =>
        [
          words.point(topic, point) ?? CHOICES.position(nameWords(point)),
          words.position(topic, point, position) ?? nameWords(position),
        ] as const,
    ),
  ];
  const widest = Math.max(0, ...rows.map(([name]) => columns(name)));
  return rows.flatMap(([name, value]) =>
    widest > Math.floor(width / 2)
      ? [...wrapped(name, width, indent, `${indent}  `), ...wrapped(value, width, `${indent}  `)]
      : wrapped(value, width, `${indent}${padded(name, widest)}  `, " ".repeat(indent.length + widest + 2)),
  );
}
