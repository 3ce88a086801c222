import { attempt, whyNotKept } from "./attempt.ts";
import { keepSetting, setting } from "./database.ts";
import { readKeptFile, writeKeptFile } from "./job-files.ts";

/** Something the device keeps besides jobs, as both stores hold it. Of two that differ, the greater number was written last. */
interface Kept<T> {
  readonly number: number;
  /** Null where it was taken out. */
  readonly value: T | null;
}

/**
 * What this device keeps under a name in both of its stores; undefined where there is none, or where no store can be
 * read. What one of them lacks it gets from the other.
 */
export async function keptTwice<T>(name: string): Promise<T | undefined> {
  return (await newest<T>(name))?.value ?? undefined;
}

async function newest<T>(name: string): Promise<Kept<T> | undefined> {
  const [database, file] = await Promise.all([
    attempt("database", "read", () => setting<Kept<T>>(name)),
    attempt("files", "read", async () => fromText<T>(await readKeptFile(name))),
  ]);
  const inDatabase = database.ok ? database.value : undefined;
  const inFile = file.ok ? file.value : undefined;
  const last = laterOf(inDatabase, inFile);
  if (last === undefined) return undefined;
  if (database.ok && inDatabase?.number !== last.number)
    await attempt("database", "write", () => keepSetting(name, last, "strict"));
  if (file.ok && inFile?.number !== last.number)
    await attempt("files", "write", () => writeKeptFile(name, JSON.stringify(last)));
  return last;
}

/** The one of two that was written last. */
export function laterOf<T>(a: Kept<T> | undefined, b: Kept<T> | undefined): Kept<T> | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return b.number > a.number ? b : a;
}

function fromText<T>(text: string | null): Kept<T> | undefined {
  // Its checksum held, so it is what this app wrote.
  return text === null ? undefined : (JSON.parse(text) as Kept<T>);
}

/** Keeps something under a name in both stores, or takes it out with null; fails where it does not count as kept. */
export async function keepTwice<T>(name: string, value: T | null): Promise<void> {
  const kept: Kept<T> = { number: ((await newest<T>(name))?.number ?? 0) + 1, value };
  const database = await attempt("database", "write", () => keepSetting(name, kept, "strict"));
  const files = await attempt("files", "write", () => writeKeptFile(name, JSON.stringify(kept)));
  const failed = whyNotKept(database, files);
  if (failed !== undefined) throw failed.error;
}
