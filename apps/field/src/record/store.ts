import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Entry } from "./entry.ts";
import { secondStore } from "./second-store.ts";

/** A job as the list of jobs shows it. */
export interface JobLabel {
  readonly id: string;
  readonly title: string;
  readonly changed: string;
  /** The demonstration, which may be thrown away. */
  readonly invented: boolean;
}

export interface Tables extends DBSchema {
  entries: { key: [job: string, id: string]; value: Entry & { readonly job: string }; indexes: { job: string } };
  jobs: { key: string; value: JobLabel };
  /** What the device remembers for itself: the last place on screen, the theme, who is at work. */
  settings: { key: string; value: unknown };
}

const NAME = "good-grounds";

let opened: Promise<IDBPDatabase<Tables>> | undefined;
let made = 0;

/** How often the storage was found empty in this tab: more than it was when a job was opened means that it is gone. */
export function emptied(): number {
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

async function open(): Promise<IDBPDatabase<Tables>> {
  let isNew = false;
  const db = await openDB<Tables>(NAME, 1, {
    upgrade(fresh) {
      isNew = true;
      made += 1;
      tables(fresh);
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
  const second = await secondStore(NAME, tables, (fresh) => copyAll(db, fresh));
  // An empty store beside a full one was lost by the browser, not by a person: those who delete, delete in both.
  if (isNew && second !== undefined) await copyAll(second, db).catch(() => undefined);
  return db;
}

function tables(db: IDBPDatabase<Tables>): void {
  db.createObjectStore("entries", { keyPath: ["job", "id"] }).createIndex("job", "job");
  db.createObjectStore("jobs", { keyPath: "id" });
  db.createObjectStore("settings");
}

async function copyAll(from: IDBPDatabase<Tables>, to: IDBPDatabase<Tables>): Promise<void> {
  const [entries, labels] = [await from.getAll("entries"), await from.getAll("jobs")];
  const change = to.transaction(["entries", "jobs"], "readwrite", { durability: "strict" });
  for (const entry of entries)
    change
      .objectStore("entries")
      .put(entry)
      .catch(() => undefined);
  for (const label of labels)
    change
      .objectStore("jobs")
      .put(label)
      .catch(() => undefined);
  await change.done;
}

/** Makes a change in the store, and then in the second where there is one; only the first can fail. */
async function inBoth(work: (db: IDBPDatabase<Tables>) => Promise<void>): Promise<void> {
  const db = await database();
  await work(db);
  const second = await secondStore(NAME, tables, (fresh) => copyAll(db, fresh));
  if (second !== undefined) await work(second).catch(() => undefined);
}

/** Keeps entries; resolves once they are on the disk, not before. */
export function keep(job: string, entries: readonly Entry[]): Promise<void> {
  return inBoth(async (db) => {
    const change = db.transaction("entries", "readwrite", { durability: "strict" });
    // What a single one fails of, the whole change fails of, and is told there.
    for (const entry of entries) change.store.put({ ...entry, job }).catch(() => undefined);
    await change.done;
  });
}

export async function entriesOf(job: string): Promise<readonly Entry[]> {
  const db = await database();
  const found = await db.getAllFromIndex("entries", "job", job);
  return found.map(({ job: _, ...entry }) => entry);
}

export async function jobs(): Promise<readonly JobLabel[]> {
  const db = await database();
  const all = [...(await db.getAll("jobs"))];
  const labelled = new Set(all.map(({ id }) => id));
  // Where the browser was stopped before a job got its label, the job is shown all the same.
  const names = db.transaction("entries").store.index("job");
  for (let at = await names.openKeyCursor(null, "nextunique"); at !== null; at = await at.continue())
    if (!labelled.has(at.key)) all.push({ id: at.key, title: at.key, changed: "", invented: false });
  return all.sort((a, b) => (a.changed < b.changed ? 1 : -1));
}

export function keepJob(label: JobLabel): Promise<void> {
  return inBoth(async (db) => {
    const change = db.transaction("jobs", "readwrite", { durability: "strict" });
    change.store.put(label).catch(() => undefined);
    await change.done;
  });
}

/** Throws a job away with everything in it. */
export function discardJob(id: string): Promise<void> {
  return inBoth(async (db) => {
    const change = db.transaction(["entries", "jobs"], "readwrite", { durability: "strict" });
    for (const key of await change.objectStore("entries").index("job").getAllKeys(id))
      change
        .objectStore("entries")
        .delete(key)
        .catch(() => undefined);
    change
      .objectStore("jobs")
      .delete(id)
      .catch(() => undefined);
    await change.done;
  });
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
