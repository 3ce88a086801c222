import { ITEMS, type KnownItem } from "@good-grounds/inspection/items";
import { join, membersOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { ABSENT, type ANSWERS } from "../../words/inspected.ts";

export type Outcome = keyof typeof ANSWERS;

const LIST = "inspected";

/** Places at which the items are answered, by item. */
export function placesByItem(record: JobRecord): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  for (const name of membersOf(record, LIST)) {
    const item = record.value(join(LIST, `${name}/item`));
    if (typeof item === "string" && !places.has(item)) places.set(item, join(LIST, name));
  }
  return places;
}

/** Where an item is answered, or would be. */
export function placeOf(places: ReadonlyMap<string, string>, item: string): string {
  return places.get(item) ?? join(LIST, item);
}

/** Whether an answer stands, with the reason or the observation it needs. */
function isAnswered(record: JobRecord, place: string | undefined): boolean {
  if (place === undefined) return false;
  const outcome = record.value(join(place, "outcome"));
  if (outcome === "limited" || outcome === "not-verified") return record.value(join(place, "reason")) !== undefined;
  if (outcome === "observed") {
    const named = record.value(join(place, "observations"));
    return Array.isArray(named) && named.length > 0;
  }
  return outcome !== undefined;
}

export function answered(record: JobRecord, items: readonly KnownItem[] = ITEMS): number {
  const places = placesByItem(record);
  return items.filter(({ id }) => isAnswered(record, places.get(id))).length;
}

type Change = readonly [path: string, value: Value];

/** The changes that answer an item. A reason does not outlive the answer it belonged to. */
export function answering(record: JobRecord, place: string, item: string, outcome: Outcome): readonly Change[] {
  const needsReason = outcome !== "in-order" && outcome !== "observed";
  return [
    [place, true],
    [join(place, "item"), item],
    [join(place, "outcome"), outcome],
    ...(!needsReason && record.value(join(place, "reason")) !== undefined
      ? [[join(place, "reason"), null] as const]
      : []),
    ...(outcome !== "observed" && record.value(join(place, "observations")) !== undefined
      ? [[join(place, "observations"), null] as const]
      : []),
  ];
}

/** Unanswered items of a group by what would have to be there for them. */
export function absentees(record: JobRecord, items: readonly KnownItem[]): ReadonlyMap<keyof typeof ABSENT, string[]> {
  const places = placesByItem(record);
  const found = new Map<keyof typeof ABSENT, string[]>();
  for (const { id, applies } of items)
    if (applies !== "always" && record.value(join(placeOf(places, id), "outcome")) === undefined)
      found.set(applies, [...(found.get(applies) ?? []), id]);
  return found;
}

/** The changes that answer items as not applicable because of what is not there. */
export function answeringAbsent(
  record: JobRecord,
  circumstance: keyof typeof ABSENT,
  items: readonly string[],
): readonly Change[] {
  const places = placesByItem(record);
  return items.flatMap((item) => {
    const place = placeOf(places, item);
    return [
      ...answering(record, place, item, "not-applicable"),
      [join(place, "reason"), ABSENT[circumstance]] as const,
    ];
  });
}
