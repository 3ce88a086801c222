import type { NearDifference } from "@good-grounds/core";
import { entryKey, type Group, shownValue } from "./group.ts";
import type { Entry } from "./observed.ts";
import { byText, differ } from "./order.ts";

/** Sets with more facts and positions than this are not searched: the search takes as many steps as there are, for each. */
export const MOST_ENTRIES = 60;

/**
 * Groups that are alike in all but one fact or position: it has another value, or one group does not have it. They come
 * as families, all groups alike but for the one fact together, since every one of them may explain the others. A family
 * counts where its classifications are not all the same. Time and memory grow with groups times facts, never with pairs.
 * The numbers of the members are positions in `groups`.
 */
export function nearDifferences(groups: readonly Group[]): readonly NearDifference[] {
  const topics = new Map<string, Numbered[]>();
  for (const [index, group] of groups.entries()) {
    const all = topics.get(group.topic) ?? [];
    topics.set(group.topic, all);
    all.push([index, group]);
  }
  return [...topics.values()].flatMap(nearInTopic).sort(byPlace);
}

type Numbered = readonly [number, Group];

interface Family {
  readonly entry: Entry;
  readonly rest: string;
  readonly members: (readonly [number, Group, Entry])[];
}

function nearInTopic(all: readonly Numbered[]): readonly NearDifference[] {
  const numbers = new Map<string, number>();
  const numberOf = (entry: Entry): number => {
    const key = entryKey(entry);
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  };
  const whole = new Map<string, Numbered>();
  const families = new Map<string, Family>();
  for (const [index, group] of all) {
    if (group.entries.size > MOST_ENTRIES) continue;
    const entries = [...group.entries.values()]
      .map((entry) => ({ entry, number: numberOf(entry) }))
      .sort((a, b) => a.number - b.number);
    whole.set(entries.map(({ number }) => number).join(), [index, group]);
    for (const { entry } of entries) {
      const rest = entries.flatMap((other) => (other.entry === entry ? [] : [other.number])).join();
      const key = `${entry.kind} ${entry.name} ${rest}`;
      const family = families.get(key) ?? { entry, rest, members: [] };
      families.set(key, family);
      family.members.push([index, group, entry]);
    }
  }
  return [...families.values()].flatMap((family) => differenceOf(family, whole.get(family.rest)));
}

function differenceOf({ entry, members }: Family, without: Numbered | undefined): readonly NearDifference[] {
  const groups = members.map(([, group]) => group);
  if (without !== undefined) groups.push(without[1]);
  // Choices stand in order of classification, so the first and the last of a group tell whether there are two.
  const ends = groups.flatMap(({ choices }) => [choices[0], choices.at(-1)].filter((choice) => choice !== undefined));
  if (groups.length < 2 || !differ(ends)) return [];
  const shown: NearDifference["members"][number][] = members.map(([set, , own]) => ({ set, value: shownValue(own) }));
  if (without !== undefined) shown.push({ set: without[0], value: null });
  shown.sort((a, b) => a.set - b.set);
  return [{ differs: { kind: entry.kind, name: entry.name }, members: shown }];
}

function byPlace(a: NearDifference, b: NearDifference): number {
  return (
    (a.members[0]?.set ?? 0) - (b.members[0]?.set ?? 0) ||
    byText(a.differs.name, b.differs.name) ||
    byText(a.differs.kind, b.differs.kind)
  );
}
