import { type Entry, entryId, knewOf, type Value } from "./entry.ts";

/**
 * What stands in a job: all entries, and for every place those that no later one replaced. Taking in entries is
 * order-independent and taking one in twice changes nothing, so that copies join without a server. Where two people
 * wrote one place without knowing of each other, both entries stand until somebody chooses.
 */
export class Record {
  readonly #entries = new Map<string, Entry>();
  readonly #standing = new Map<string, readonly Entry[]>();
  readonly #children = new Map<string, Set<string>>();
  readonly #seen = new Map<string, number>();

  constructor(entries: Iterable<Entry> = []) {
    for (const entry of entries) this.add(entry);
  }

  /** Takes an entry in; false where it was there already. */
  add(entry: Entry): boolean {
    if (this.#entries.has(entry.id)) return false;
    this.#entries.set(entry.id, entry);
    this.#seen.set(entry.author, Math.max(this.#seen.get(entry.author) ?? 0, entry.number));
    const standing = this.#standing.get(entry.path) ?? [];
    if (!standing.some((other) => knewOf(other, entry)))
      this.#standing.set(
        entry.path,
        [...standing.filter((other) => !knewOf(entry, other)), entry].sort((a, b) => (a.id < b.id ? -1 : 1)),
      );
    let path = entry.path;
    for (let cut = path.lastIndexOf("/"); cut > 0; cut = path.lastIndexOf("/")) {
      const parent = path.slice(0, cut);
      const names = this.#children.get(parent) ?? new Set();
      this.#children.set(parent, names.add(path.slice(cut + 1)));
      path = parent;
    }
    this.#children.set("", (this.#children.get("") ?? new Set()).add(path));
    return true;
  }

  /** Makes the next entry of an author; it is not part of the record until it is added. */
  next(author: string, by: string, at: string, path: string, value: Value): Entry {
    const number = (this.#seen.get(author) ?? 0) + 1;
    return { id: entryId(author, number), author, number, seen: Object.fromEntries(this.#seen), at, by, path, value };
  }

  /** Entries that stand at a place: none, one, or several that somebody has to choose between. */
  standing(path: string): readonly Entry[] {
    return this.#standing.get(path) ?? NONE;
  }

  /** The value at a place; undefined where there is none or several differ. */
  value(path: string): Value | undefined {
    const [first, ...others] = this.standing(path);
    if (first === undefined || others.some(({ value }) => !equal(value, first.value))) return undefined;
    return first.value ?? undefined;
  }

  /** Names below a place, in the order in which copies agree. */
  names(path: string): readonly string[] {
    return [...(this.#children.get(path) ?? NONE_NAMED)].sort();
  }

  /** Places where more than one value stands. */
  conflicts(): readonly string[] {
    return [...this.#standing]
      .filter(([, [first, ...others]]) => others.some(({ value }) => !equal(value, first?.value ?? null)))
      .map(([path]) => path)
      .sort();
  }

  /**
   * Every entry of a place and below it, oldest first: by clock, but never before anything its author knew of, whatever
   * the clocks of the devices said.
   */
  history(path = ""): readonly Entry[] {
    const below = `${path}/`;
    const times = this.#times();
    const known = new Map<Entry, number>();
    for (const entry of times.keys()) known.set(entry, extent(entry));
    return [...this.#entries.values()]
      .filter((entry) => path === "" || entry.path === path || entry.path.startsWith(below))
      .sort(
        (a, b) =>
          compare(times.get(a) ?? "", times.get(b) ?? "") ||
          (known.get(a) ?? 0) - (known.get(b) ?? 0) ||
          compare(a.id, b.id),
      );
  }

  /** For every entry its time, or the latest of what its author knew of where that is later. */
  #times(): ReadonlyMap<Entry, string> {
    const times = new Map<Entry, string>();
    // Who knew of more comes after whatever he knew of.
    const ordered = [...this.#entries.values()].sort((a, b) => extent(a) - extent(b));
    for (const entry of ordered) {
      let time = entry.at;
      for (const [author, number] of Object.entries(entry.seen)) {
        const known = this.#entries.get(entryId(author, number));
        const then = known === undefined ? undefined : times.get(known);
        if (then !== undefined && then > time) time = then;
      }
      times.set(entry, time);
    }
    return times;
  }

  /** The entry with this id. */
  entry(id: string): Entry | undefined {
    return this.#entries.get(id);
  }

  /** Whether everything the author of an entry knew of is here. */
  covers({ seen }: Entry): boolean {
    return Object.entries(seen).every(([author, number]) => (this.#seen.get(author) ?? 0) >= number);
  }

  entries(): readonly Entry[] {
    return [...this.#entries.values()];
  }

  get size(): number {
    return this.#entries.size;
  }
}

const NONE: readonly Entry[] = Object.freeze([]);
const NONE_NAMED: ReadonlySet<string> = new Set();

/** How much the author of an entry knew of; more than of any entry he knew of. */
function extent({ seen }: Entry): number {
  let sum = 0;
  for (const author in seen) sum += seen[author] ?? 0;
  return sum;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Whether two values are the same, member by member. */
export function equal(a: Value, b: Value): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  const [one, other] = [Object.entries(a), Object.entries(b)];
  return (
    Array.isArray(a) === Array.isArray(b) &&
    one.length === other.length &&
    one.every(
      ([name, value]) =>
        Object.hasOwn(b, name) && equal(value, (b as { readonly [name: string]: Value })[name] as Value),
    )
  );
}
