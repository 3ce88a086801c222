import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Entry } from "./entry.ts";
import type { JobLabel } from "./label.ts";

export interface Tables extends DBSchema {
  entries: { key: [job: string, id: string]; value: Entry & { readonly job: string }; indexes: { job: string } };
  jobs: { key: string; value: JobLabel };
  /** What the device remembers for itself: the last place on screen, the theme, who is at work. */
  settings: { key: string; value: unknown };
}

export const NAME = "good-grounds";

/** What the database holds of a job. */
export interface JobRows {
  readonly entries: readonly Entry[];
  /** Decisions to throw the job away that were carried out here, until its file is known to be gone. */
  readonly thrownAway: readonly string[];
}

let opened: Promise<IDBPDatabase<Tables>> | undefined;
let made = 0;

/** How often the database was made in this tab: more than it was when a job was read means that it was emptied. */
export function timesMade(): number {
  return made;
}

async function database(): Promise<IDBPDatabase<Tables>> {
  opened ??= open();
  try {
    return await opened;
  } catch (error) {
    // The next attempt starts anew: what stops a browser once need not stop it again.
    opened = undefined;
    throw error;
  }
}

function open(): Promise<IDBPDatabase<Tables>> {
  return openDB<Tables>(NAME, 1, {
    upgrade(db) {
      made += 1;
      db.createObjectStore("entries", { keyPath: ["job", "id"] }).createIndex("job", "job");
      db.createObjectStore("jobs", { keyPath: "id" });
      db.createObjectStore("settings");
    },
    // A newer version of the app in another tab, or a person who clears the storage, is not held up.
    blocking(_current, _newer, event) {
      opened = undefined;
      (event.target as IDBDatabase).close();
    },
    terminated() {
      opened = undefined;
    },
  });
}

const decisionsOf = (job: string) => `thrown away ${job}`;

/** What the database holds of a job. */
export async function readRows(job: string): Promise<JobRows> {
  const look = (await database()).transaction(["entries", "settings"]);
  const [rows, thrownAway] = await Promise.all([
    look.objectStore("entries").index("job").getAll(job),
    look.objectStore("settings").get(decisionsOf(job)),
  ]);
  return {
    entries: rows.map(({ job: _, ...entry }) => entry),
    thrownAway: (thrownAway as readonly string[] | undefined) ?? [],
  };
}

/** Writes entries of a job, all or none of them; resolves when the browser says that the disk has them. */
export async function writeRows(job: string, entries: readonly Entry[]): Promise<void> {
  const change = (await database()).transaction("entries", "readwrite", { durability: "strict" });
  // What a single one fails of, the whole change fails of, and is told there.
  for (const entry of entries) change.store.put({ ...entry, job }).catch(() => undefined);
  await change.done;
}

/** The labels of jobs, and the ids of all jobs that have a label or an entry. */
export async function readLabels(): Promise<{ readonly labels: readonly JobLabel[]; readonly ids: readonly string[] }> {
  const db = await database();
  const labels = await db.getAll("jobs");
  const ids = new Set(labels.map(({ id }) => id));
  const names = db.transaction("entries").store.index("job");
  for (let at = await names.openKeyCursor(null, "nextunique"); at !== null; at = await at.continue()) ids.add(at.key);
  return { labels, ids: [...ids] };
}

export async function writeLabel(label: JobLabel): Promise<void> {
  const change = (await database()).transaction("jobs", "readwrite", { durability: "strict" });
  change.store.put(label).catch(() => undefined);
  await change.done;
}

/** Deletes all that the database holds of a job and notes the decisions that this carried out, at one stroke. */
export async function deleteRows(job: string, decisions: readonly string[]): Promise<void> {
  const change = (await database()).transaction(["entries", "jobs", "settings"], "readwrite", { durability: "strict" });
  const [entries, labels, settings] = [
    change.objectStore("entries"),
    change.objectStore("jobs"),
    change.objectStore("settings"),
  ];
  for (const key of await entries.index("job").getAllKeys(job)) entries.delete(key).catch(() => undefined);
  labels.delete(job).catch(() => undefined);
  if (decisions.length > 0) {
    const before = (await settings.get(decisionsOf(job))) as readonly string[] | undefined;
    settings.put([...(before ?? []), ...decisions], decisionsOf(job)).catch(() => undefined);
  }
  await change.done;
}

/** The file of a thrown away job is gone: nothing has to be remembered of it. */
export function forgetDecisions(job: string): Promise<void> {
  return dropSetting(decisionsOf(job));
}

export async function setting<T>(name: string): Promise<T | undefined> {
  return (await (await database()).get("settings", name)) as T | undefined;
}

/** Remembers something for this device; "strict" resolves only when the disk has it. */
export async function keepSetting(
  name: string,
  value: unknown,
  durability: "default" | "strict" = "default",
): Promise<void> {
  const change = (await database()).transaction("settings", "readwrite", { durability });
  change.store.put(value, name).catch(() => undefined);
  await change.done;
}

export async function dropSetting(name: string): Promise<void> {
  await (await database()).delete("settings", name);
}
