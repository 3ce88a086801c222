import { unframe } from "./framing.ts";
import type { Added, Answers, Asked, Told } from "./job-files-protocol.ts";
import { readLog } from "./job-log.ts";

/**
 * The files of jobs, one a job, in the browser's private file system. A worker of its own because only there the browser
 * lets a file be added to in place and written through to the disk. Every file is open for no longer than one request and
 * under a lock by its name, so that all tabs add to the same file, one after the other.
 */
declare const self: DedicatedWorkerGlobalScope;

const FOLDER = "jobs";
const ENDING = ".log";
/** Files of what the device keeps besides jobs. */
const KEPT = ".kept";

class Absent extends Error {}

/** The folder of all files, asked for once. */
let known: Promise<FileSystemDirectoryHandle> | undefined;

function folder(): Promise<FileSystemDirectoryHandle> {
  known ??= findFolder();
  return known;
}

async function findFolder(): Promise<FileSystemDirectoryHandle> {
  const storage = navigator.storage as StorageManager | undefined;
  if (storage?.getDirectory === undefined) throw new Absent("no private file system");
  if (globalThis.FileSystemFileHandle?.prototype.createSyncAccessHandle === undefined)
    throw new Absent("no files that are written in place");
  const root = await storage.getDirectory().catch((error: unknown) => {
    // In a private window some browsers have the call and refuse it.
    throw isNamed(error, "SecurityError", "NotSupportedError") ? new Absent(String(error)) : error;
  });
  return root.getDirectoryHandle(FOLDER, { create: true });
}

/** A folder that went wrong, or that was cleared away under an open tab, is looked for anew at the second try. */
async function inFolder<T>(work: (place: FileSystemDirectoryHandle) => Promise<T>): Promise<T> {
  const had = known !== undefined;
  try {
    return await work(await folder());
  } catch (error) {
    known = undefined;
    if (!had || error instanceof Absent) throw error;
    return work(await folder());
  }
}

async function work(asked: Asked): Promise<Answers[keyof Answers]> {
  if (asked.ask === "names") return inFolder(names);
  const name = "name" in asked ? `${asked.name}${KEPT}` : `${asked.job}${ENDING}`;
  const onIt = () => inFolder((place) => onFile(place, name, asked));
  // Without locks there is one tab, or the browser refuses the second and that is told.
  return navigator.locks === undefined
    ? onIt()
    : navigator.locks.request(`file ${"name" in asked ? name : asked.job}`, onIt);
}

async function onFile(
  place: FileSystemDirectoryHandle,
  name: string,
  asked: Exclude<Asked, { readonly ask: "names" }>,
): Promise<Answers[keyof Answers]> {
  if (asked.ask === "read") return readLog(await contents(place, name));
  if (asked.ask === "kept") return unframe(await contents(place, name)).texts.at(-1) ?? null;
  if (asked.ask === "keep") return replace(place, name, asked.bytes);
  if (asked.ask === "add") return add(place, name, asked.bytes, asked.leastSize);
  await place.removeEntry(name).catch(unlessNotFound);
  return null;
}

async function names(place: FileSystemDirectoryHandle): Promise<readonly string[]> {
  const found: string[] = [];
  for await (const name of place.keys()) if (name.endsWith(ENDING)) found.push(name.slice(0, -ENDING.length));
  return found;
}

async function contents(place: FileSystemDirectoryHandle, name: string): Promise<Uint8Array> {
  const handle = await place.getFileHandle(name).catch(unlessNotFound);
  if (handle === undefined) return new Uint8Array();
  return new Uint8Array(await (await handle.getFile()).arrayBuffer());
}

async function add(
  place: FileSystemDirectoryHandle,
  name: string,
  bytes: Uint8Array,
  leastSize: number,
): Promise<Added> {
  const handle = await place.getFileHandle(name, { create: leastSize === 0 }).catch(unlessNotFound);
  if (handle === undefined) return { size: 0, short: true };
  const file = await handle.createSyncAccessHandle();
  try {
    const size = file.getSize();
    if (size < leastSize) return { size, short: true };
    try {
      const written = file.write(bytes as BufferSource, { at: size });
      if (written !== bytes.length) throw new Error(`${written} of ${bytes.length} bytes were written`);
      file.flush();
    } catch (error) {
      takeBack(file, size);
      throw error;
    }
    return { size: size + bytes.length, short: false };
  } finally {
    file.close();
  }
}

/** Writes a file anew. One that is stopped half way is damaged, which its frame shows; the database has the same text. */
async function replace(place: FileSystemDirectoryHandle, name: string, bytes: Uint8Array): Promise<null> {
  const file = await (await place.getFileHandle(name, { create: true })).createSyncAccessHandle();
  try {
    file.truncate(0);
    const written = file.write(bytes as BufferSource, { at: 0 });
    if (written !== bytes.length) throw new Error(`${written} of ${bytes.length} bytes were written`);
    file.flush();
  } finally {
    file.close();
  }
  return null;
}

/** What was written in part goes, where the disk lets it; where not, it is passed over when the file is read. */
function takeBack(file: FileSystemSyncAccessHandle, size: number): void {
  try {
    file.truncate(size);
    file.flush();
  } catch {
    // Told by the error that brought us here.
  }
}

function unlessNotFound(error: unknown): undefined {
  if (!isNamed(error, "NotFoundError")) throw error;
  return undefined;
}

function isNamed(error: unknown, ...names: readonly string[]): boolean {
  return error instanceof DOMException && names.includes(error.name);
}

self.onmessage = async ({ data: { number, asked } }: MessageEvent<{ number: number; asked: Asked }>) => {
  const tell = (told: Told) => self.postMessage(told);
  try {
    tell({ number, answer: await work(asked) });
  } catch (error) {
    const words = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    tell(error instanceof Absent ? { number, absent: error.message } : { number, trouble: words });
  }
};
