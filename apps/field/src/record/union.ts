import type { Entry } from "./entry.ts";
import type { JobLog } from "./job-log.ts";
import { isSame } from "./sound.ts";

/** What two stores hold of one job, taken together, and what has to be written where so that both hold all of it. */
export interface Union {
  readonly entries: readonly Entry[];
  /** Entries of the file that the database lacks or holds otherwise. */
  readonly databaseLacks: readonly Entry[];
  /** Entries of the database that the file lacks. */
  readonly fileLacks: readonly Entry[];
  /** Entries that only this tab has. */
  readonly onlyOwn: readonly Entry[];
}

/**
 * Takes together what the database, the file and this tab hold. Where the database holds another entry under the same id
 * than the file, the file's stands: it was read under a checksum of its own.
 */
export function unite(database: readonly Entry[], file: ReadonlyMap<string, Entry>, own: readonly Entry[] = []): Union {
  const all = new Map(database.map((entry) => [entry.id, entry]));
  const databaseLacks: Entry[] = [];
  const fileLacks = database.filter(({ id }) => !file.has(id));
  for (const entry of file.values()) {
    const there = all.get(entry.id);
    if (there === undefined || !isSame(there, entry)) databaseLacks.push(entry);
    all.set(entry.id, entry);
  }
  const onlyOwn = own.filter(({ id }) => !all.has(id));
  for (const entry of onlyOwn) all.set(entry.id, entry);
  return { entries: [...all.values()], databaseLacks, fileLacks, onlyOwn };
}

/** A tab that is closed while it keeps a change has no more than this many entries on the way. */
const LAST_WORDS = 20;

/**
 * Whether what a file lacks may be what a tab was about to add when it was closed: the database is written first. That is
 * no loss and nothing to tell; nobody had been told that it is kept.
 */
export function areLastWords(lacking: readonly Entry[], { entries, damagedBytes, toldBytes, size }: JobLog): boolean {
  const authors = new Set(lacking.map(({ author }) => author));
  const [author] = authors;
  if (size === 0 || damagedBytes > toldBytes || authors.size !== 1 || author === undefined) return false;
  if (lacking.length > LAST_WORDS) return false;
  const first = Math.min(...lacking.map(({ number }) => number));
  for (const entry of entries.values()) {
    if (entry.author === author && entry.number >= first) return false;
    if ((entry.seen[author] ?? 0) >= first) return false;
  }
  return true;
}

/** How many entries are missing among these: numbers of authors that others follow or knew of. */
export function missingAmong(entries: readonly Entry[]): number {
  const last = new Map<string, number>();
  const reach = (author: string, number: number) => last.set(author, Math.max(last.get(author) ?? 0, number));
  for (const { author, number, seen } of entries) {
    reach(author, number);
    for (const [other, known] of Object.entries(seen)) reach(other, known);
  }
  let sum = 0;
  for (const number of last.values()) sum += number;
  return sum - new Set(entries.map(({ id }) => id)).size;
}
