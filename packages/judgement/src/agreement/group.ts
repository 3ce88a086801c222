import type { ChoiceMade, ChoiceSet, FactShown, PositionShown } from "@good-grounds/core";
import type { Entry, Observed } from "./observed.ts";
import { byText, plainer } from "./order.ts";

/** Everything chosen on one set of facts and positions. Grows as files are read. */
export interface Group {
  /** The same for the same topic, facts and positions, in whatever order they are written. */
  readonly key: string;
  readonly topic: string;
  /** By kind and name, each in the plainest of the ways it was written. */
  readonly entries: Map<string, Entry>;
  readonly choices: ChoiceMade[];
}

export function keyOf({ topic, entries }: Observed): string {
  return JSON.stringify([topic, ...entries.map(entryKey).sort()]);
}

/** Names have no spaces, so this is unambiguous. */
export function entryKey({ kind, name, key }: Entry): string {
  return `${kind} ${name} ${key}`;
}

export function newGroup(key: string, topic: string): Group {
  return { key, topic, entries: new Map(), choices: [] };
}

export function addTo({ entries, choices }: Group, observed: Observed): void {
  choices.push(observed.choice);
  for (const entry of observed.entries) {
    const place = `${entry.kind} ${entry.name}`;
    const there = entries.get(place)?.value;
    // A yes written as a word stays beside the yes of a box ticked: both say the same, and the box is the plainer.
    if (there === undefined || (typeof there === "string" && isPlainer(entry.value, there))) entries.set(place, entry);
  }
}

function isPlainer(value: Entry["value"], there: string): boolean {
  return typeof value === "boolean" || (typeof value === "string" && plainer(value, there) === value);
}

/** A group as it is shown. */
export function shownSet({ topic, entries, choices }: Group): ChoiceSet {
  const sorted = [...entries.values()].sort((a, b) => byText(a.name, b.name));
  const facts: FactShown[] = sorted
    .filter(({ kind }) => kind === "fact")
    .map((entry) => ({ name: entry.name, value: shownValue(entry) }));
  const positions: PositionShown[] = sorted
    .filter(({ kind }) => kind === "position")
    .map(({ name, key }) => ({ point: name, position: key }));
  return { topic, facts, positions, choices };
}

export function shownValue({ value }: Entry): FactShown["value"] {
  if (typeof value !== "object") return value;
  return value.notKnown === "not-applicable" ? { notApplicable: true } : { notKnown: true };
}
