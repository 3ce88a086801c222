import { dropSetting, keepSetting, setting } from "../record/store.ts";

/** Photographs of this device by the hash of their bytes, in the browser's private file system. */
const FOLDER = "photographs";

async function folder(): Promise<FileSystemDirectoryHandle> {
  return (await navigator.storage.getDirectory()).getDirectoryHandle(FOLDER, { create: true });
}

/** Some browsers have no such file system, or none that a page can write to: there the database holds them. */
const inDatabase = (sha256: string) => `photograph ${sha256}`;

/** Keeps a photograph; resolves once it is written out. */
export async function keepPhotograph(sha256: string, bytes: Blob): Promise<void> {
  const file = await folder()
    .then((place) => place.getFileHandle(`${sha256}.jpg`, { create: true }))
    .catch(() => undefined);
  if (file?.createWritable === undefined) return keepSetting(inDatabase(sha256), bytes, "strict");
  // Written beside and moved when it is whole: half a photograph never stands under a hash.
  const writable = await file.createWritable();
  try {
    await writable.write(bytes);
    await writable.close();
  } catch (error) {
    await writable.abort().catch(() => undefined);
    throw error;
  }
}

/** The photograph with this hash; undefined where this device does not have it. */
export async function photograph(sha256: string): Promise<Blob | undefined> {
  const file = await folder()
    .then((place) => place.getFileHandle(`${sha256}.jpg`))
    .then((handle) => handle.getFile())
    .catch(() => undefined);
  // A file of nothing was begun and never written.
  if (file !== undefined && file.size > 0) return file;
  return setting<Blob>(inDatabase(sha256)).catch(() => undefined);
}

/** Throws a photograph away; one that is not here is no failure. */
export async function discardPhotograph(sha256: string): Promise<void> {
  await folder()
    .then((place) => place.removeEntry(`${sha256}.jpg`))
    .catch(() => undefined);
  await dropSetting(inDatabase(sha256)).catch(() => undefined);
}
