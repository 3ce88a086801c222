import { type IDBPDatabase, wrap } from "idb";
import { NAME, type Tables } from "./database.ts";
import type { Entry } from "./entry.ts";

/** What versions of the app before the files of jobs kept beside the database: the same in a bucket of its own. */
export interface FormerStore {
  readonly entries: ReadonlyMap<string, readonly Entry[]>;
  /** Throws it away once all of it is elsewhere. */
  readonly retire: () => Promise<void>;
}

interface Buckets {
  readonly keys: () => Promise<readonly string[]>;
  readonly open: (name: string) => Promise<{ readonly indexedDB: IDBFactory }>;
  readonly delete: (name: string) => Promise<void>;
}

const BUCKET = "second";

/** Reads the former second store; undefined where there is none. */
export async function formerStore(): Promise<FormerStore | undefined> {
  const buckets = (navigator as { readonly storageBuckets?: Buckets }).storageBuckets;
  if (buckets === undefined || !(await buckets.keys()).includes(BUCKET)) return undefined;
  const { indexedDB } = await buckets.open(BUCKET);
  const entries = new Map<string, Entry[]>();
  const db = await existing(indexedDB);
  if (db !== undefined) {
    for (const { job, ...entry } of await db.getAll("entries")) {
      const own = entries.get(job) ?? [];
      own.push(entry);
      entries.set(job, own);
    }
    db.close();
  }
  return { entries, retire: () => buckets.delete(BUCKET) };
}

/** The database as it is there; none is made. */
function existing(indexedDB: IDBFactory): Promise<IDBPDatabase<Tables> | undefined> {
  return new Promise((done, failed) => {
    const request = indexedDB.open(NAME);
    request.onupgradeneeded = () => {
      request.transaction?.abort();
      done(undefined);
    };
    request.onsuccess = () => done(wrap(request.result) as unknown as IDBPDatabase<Tables>);
    request.onerror = () => failed(request.error);
  });
}
