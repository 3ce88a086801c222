import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Entry } from "./entry.ts";

/** A job as the list of jobs shows it. */
export interface JobLabel {
  readonly id: string;
  readonly title: string;
  readonly changed: string;
  /** The demonstration, which may be thrown away. */
  readonly invented: boolean;
}

interface Tables extends DBSchema {
  entries: { key: [job: string, id: string]; value: Entry & { readonly job: string }; indexes: { job: string } };
  jobs: { key: string; value: JobLabel };
  /** What the device remembers for itself: the last place on screen, the theme, who is at work. */
  settings: { key: string; value: unknown };
}

const NAME = "good-grounds";

let opened: Promise<IDBPDatabase<Tables>> | undefined;

function database(): Promise<IDBPDatabase<Tables>> {
  opened ??= openDB<Tables>(NAME, 1, {
    upgrade(db) {
      db.createObjectStore("entries", { keyPath: ["job", "id"] }).createIndex("job", "job");
      db.createObjectStore("jobs", { keyPath: "id" });
      db.createObjectStore("settings");
    },
    terminated() {
      opened = undefined;
    },
  });
  return opened;
}

/** Keeps entries; resolves once they are on the disk, not before. */
export async function keep(job: string, entries: readonly Entry[]): Promise<void> {
  const db = await database();
  const change = db.transaction("entries", "readwrite", { durability: "strict" });
  for (const entry of entries) void change.store.put({ ...entry, job });
  await change.done;
}

export async function entriesOf(job: string): Promise<readonly Entry[]> {
  const db = await database();
  const found = await db.getAllFromIndex("entries", "job", job);
  return found.map(({ job: _, ...entry }) => entry);
}

export async function jobs(): Promise<readonly JobLabel[]> {
  const all = await (await database()).getAll("jobs");
  return all.sort((a, b) => (a.changed < b.changed ? 1 : -1));
}

export async function keepJob(label: JobLabel): Promise<void> {
  const db = await database();
  const change = db.transaction("jobs", "readwrite", { durability: "strict" });
  void change.store.put(label);
  await change.done;
}

/** Throws a job away with everything in it. */
export async function discardJob(id: string): Promise<void> {
  const db = await database();
  const change = db.transaction(["entries", "jobs"], "readwrite", { durability: "strict" });
  for (const key of await change.objectStore("entries").index("job").getAllKeys(id))
    void change.objectStore("entries").delete(key);
  void change.objectStore("jobs").delete(id);
  await change.done;
}

export async function setting<T>(name: string): Promise<T | undefined> {
  return (await (await database()).get("settings", name)) as T | undefined;
}

export async function keepSetting(name: string, value: unknown): Promise<void> {
  await (await database()).put("settings", value, name);
}
