import { type IDBPDatabase, wrap } from "idb";
import type { Tables } from "./store.ts";

/**
 * A second store beside the first, in files of its own, where the browser has storage buckets. A browser that is killed in
 * the middle of a write can take its whole database for damaged at a later start and begin an empty one without a word:
 * twice in some 140 kills while a page wrote without a pause. Both are written one after the other, so that one kill meets
 * at most one of them.
 */
let opened: Promise<IDBPDatabase<Tables> | undefined> | undefined;

interface Buckets {
  readonly open: (
    name: string,
    options: { readonly durability: "strict" },
  ) => Promise<{ readonly indexedDB: IDBFactory }>;
}

/** The second store, filled by `fill` where it was made anew; undefined where the browser has none. */
export function secondStore(
  name: string,
  upgrade: (db: IDBPDatabase<Tables>) => void,
  fill: (db: IDBPDatabase<Tables>) => Promise<void>,
): Promise<IDBPDatabase<Tables> | undefined> {
  opened ??= open(name, upgrade, fill).catch(() => {
    // It is there to help and must never be in the way; the next write tries anew.
    opened = undefined;
    return undefined;
  });
  return opened;
}

async function open(
  name: string,
  upgrade: (db: IDBPDatabase<Tables>) => void,
  fill: (db: IDBPDatabase<Tables>) => Promise<void>,
): Promise<IDBPDatabase<Tables> | undefined> {
  const buckets = (navigator as { readonly storageBuckets?: Buckets }).storageBuckets;
  if (buckets === undefined) return undefined;
  const { indexedDB } = await buckets.open("second", { durability: "strict" });
  let isNew = false;
  const db = await new Promise<IDBPDatabase<Tables>>((done, failed) => {
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = () => {
      isNew = true;
      upgrade(wrap(request.result) as unknown as IDBPDatabase<Tables>);
    };
    request.onsuccess = () => done(wrap(request.result) as unknown as IDBPDatabase<Tables>);
    request.onerror = () => failed(request.error);
  });
  db.addEventListener("close", () => {
    opened = undefined;
  });
  db.addEventListener("versionchange", () => {
    opened = undefined;
    db.close();
  });
  if (isNew) await fill(db);
  return db;
}
