import { dropSetting, keepSetting, setting } from "./database.ts";

/** How one of the two stores of this device stands. "absent": this browser has none of the kind. */
type StoreState = "works" | "absent" | { readonly trouble: string };

/** What was missing in one store and is there again from the other, since somebody last read of it. */
export interface FoundShort {
  /** Entries that the database did not hold. */
  readonly fromFiles: number;
  /** Entries that the files did not hold. */
  readonly fromDatabase: number;
  /** Bytes of the files that could not be read. */
  readonly damagedBytes: number;
  /** Entries that neither holds, though others were written in knowledge of them. */
  readonly nowhere: number;
  readonly jobs: readonly string[];
}

export interface Stores {
  readonly database: StoreState;
  readonly files: StoreState;
  readonly found: FoundShort | undefined;
}

const FOUND = "stores found short";

let now: Stores = { database: "works", files: "works", found: undefined };
const listeners = new Set<() => void>();

/** How the stores of this device stand, as far as this tab knows. */
export function stores(): Stores {
  return now;
}

/** Calls back whenever that changes; returns how to stop it. */
export function listenToStores(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function note(changes: Partial<Stores>): void {
  if (Object.entries(changes).every(([name, value]) => same(now[name as keyof Stores], value))) return;
  now = { ...now, ...changes };
  for (const listener of [...listeners]) listener();
}

function same(a: Stores[keyof Stores], b: Stores[keyof Stores]): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** Adds to what has to be told, and remembers it until somebody has read it. */
export async function noteShort(found: FoundShort): Promise<void> {
  const before = now.found;
  note({
    found: {
      fromFiles: found.fromFiles + (before?.fromFiles ?? 0),
      fromDatabase: found.fromDatabase + (before?.fromDatabase ?? 0),
      damagedBytes: found.damagedBytes + (before?.damagedBytes ?? 0),
      nowhere: found.nowhere + (before?.nowhere ?? 0),
      jobs: [...new Set([...(before?.jobs ?? []), ...found.jobs])],
    },
  });
  await keepSetting(FOUND, now.found).catch(() => undefined);
}

/** What was found when the app was last open and nobody has read yet. */
export async function recallShort(): Promise<void> {
  const left = await setting<FoundShort>(FOUND).catch(() => undefined);
  if (left !== undefined && now.found === undefined) note({ found: left });
}

/** Somebody has read what was found. */
export async function haveReadShort(): Promise<void> {
  note({ found: undefined });
  await dropSetting(FOUND).catch(() => undefined);
}
