/** What can stand at one place of a record: one reading with all that belongs to it, a word, a number. */
export type Value = null | boolean | number | string | readonly Value[] | { readonly [name: string]: Value };

/**
 * One change somebody made: at a place, a value or its removal (null). Entries are only ever added. `seen` says which
 * entries its author knew of, by author and number, so that two changes of the same place made without knowledge of each
 * other can be told from one that replaces the other.
 */
export interface Entry {
  /** The author and number, "AUTHOR:NUMBER"; the same entry has the same id in every copy. */
  readonly id: string;
  /** One tab of one device; numbers count up within it. */
  readonly author: string;
  readonly number: number;
  readonly seen: Readonly<Record<string, number>>;
  /** When, by the clock of the device, which may be wrong. */
  readonly at: string;
  /** Who, as a person's id in the record; empty before anybody is named. */
  readonly by: string;
  /** Steps from the record's root joined by "/": "boards/cu/circuits/c1/readings/zs". */
  readonly path: string;
  readonly value: Value;
}

export function entryId(author: string, number: number): string {
  return `${author}:${number}`;
}

/** Whether the author of `later` knew of `earlier`. */
export function knewOf(later: Entry, earlier: Entry): boolean {
  return Object.hasOwn(later.seen, earlier.author) && (later.seen[earlier.author] as number) >= earlier.number;
}
