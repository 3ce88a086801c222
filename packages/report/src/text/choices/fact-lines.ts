import type { FactSet, FactShown } from "@good-grounds/core";
import { CHOICES } from "../../locales/choices-en.ts";
import { columns, padded, wrapped } from "../wrap.ts";

/** Facts and positions, one a line, the values under each other. */
export function factLines({ facts, positions }: FactSet, width: number, indent: string): string[] {
  const rows = [
    ...facts.map(({ name, value }) => [name, valueWords(value)] as const),
    ...positions.map(({ point, position }) => [CHOICES.position(point), position] as const),
  ];
  const widest = Math.min(Math.max(0, ...rows.map(([name]) => columns(name))), Math.floor(width / 2));
  return rows.flatMap(([name, value]) =>
    wrapped(value, width, `${indent}${padded(name, widest)}  `, " ".repeat(indent.length + widest + 2)),
  );
}

export function valueWords(value: FactShown["value"] | null): string {
  if (value === null) return CHOICES.notRecorded;
  if (typeof value === "boolean") return value ? CHOICES.yes : CHOICES.no;
  if (typeof value === "string") return value;
  return "notKnown" in value ? CHOICES.notKnown : CHOICES.doesNotApply;
}
