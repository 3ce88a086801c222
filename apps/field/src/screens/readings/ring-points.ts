import type { About, ReadingField } from "../../keypad/fields.ts";
import { join, membersOf, ORDER } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { READINGS } from "../../words/readings.ts";

/** A name for the next point of a list, the same until something is written there. */
export type FreshName = (list: string) => string;

/** Readings of a cross-connected ring, point by point, and one more to go on with. */
export function pointFields(
  record: JobRecord,
  list: string,
  freshName: FreshName,
  label: (point: string) => string,
  expected: number | undefined,
  about: readonly About[],
): readonly ReadingField[] {
  const names = membersOf(record, list);
  // Both rounds go past the same points: the second takes its names from the first.
  const others = membersOf(record, list.replace(/crossLineCpc$/, "crossLineNeutral"));
  const nameOf = (name: string, number: number): string => {
    const given = record.value(join(list, `${name}/point`));
    return typeof given === "string" ? given : READINGS.point(number);
  };
  const fresh = freshName(list);
  const number = names.length + 1;
  const sameAsBefore = others[names.length];
  const isSecond = list.endsWith("crossLineCpc");
  const before =
    isSecond && sameAsBefore !== undefined
      ? record.value(join(list.replace(/crossLineCpc$/, "crossLineNeutral"), `${sameAsBefore}/point`))
      : undefined;
  const freshPoint = typeof before === "string" ? before : READINGS.point(number);
  const field = (name: string, point: string): ReadingField => ({
    spot: { path: join(list, `${name}/reading`) },
    pointPath: join(list, `${name}/point`),
    kind: "continuity",
    label: label(point),
    about: [],
    ...(expected === undefined ? {} : { expected }),
  });
  return [
    ...names.map((name, i) => ({ ...field(name, nameOf(name, i + 1)), ...(i === names.length - 1 ? { about } : {}) })),
    {
      ...field(fresh, freshPoint),
      ...(names.length > 0 ? { offered: true } : {}),
      with: [
        [join(list, fresh), true],
        [join(list, `${fresh}/${ORDER}`), number],
        [join(list, `${fresh}/point`), freshPoint],
      ],
    },
  ];
}
