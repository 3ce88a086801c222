import { FilesAbsent, FilesSilent } from "./job-files.ts";
import { note } from "./stores.ts";
import { within } from "./within.ts";

/** What an attempt with one of the stores came to. */
type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown };

/** Tries something with a store. Only what was written shows that a store in trouble works again. */
export async function attempt<T>(
  store: "database" | "files",
  kind: "read" | "write",
  work: () => Promise<T>,
): Promise<Outcome<T>> {
  try {
    // The files have a limit of time of their own.
    const value = await (store === "database" ? within(work(), () => new Error("it does not answer")) : work());
    if (kind === "write") note({ [store]: "works" });
    return { ok: true, value };
  } catch (error) {
    note({ [store]: error instanceof FilesAbsent ? "absent" : { trouble: wordsOf(error) } });
    return { ok: false, error };
  }
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}

/**
 * Why something does not count as kept; undefined where it does. In the files it was written through to the disk. A
 * database alone is believed where there are no files to have, or where they are not heard of. Where the disk refused the
 * file it is not: on a full disk the database says that it has what it loses at a later start.
 */
export function whyNotKept(
  database: Outcome<unknown>,
  files: Outcome<unknown>,
): { readonly error: unknown } | undefined {
  if (files.ok) return undefined;
  if (!database.ok) return database;
  return files.error instanceof FilesAbsent || files.error instanceof FilesSilent ? undefined : files;
}
