/** Where a copy is written, piece by piece. */
export interface Sink {
  readonly write: (piece: Uint8Array) => void;
  /** The whole of what was written, read from where it lies. */
  readonly finish: () => Promise<Blob>;
  /** Throws away what was written. */
  readonly giveUp: () => Promise<void>;
}

/** What a file of that system has in a worker. */
interface Direct {
  readonly createSyncAccessHandle: () => Promise<{
    readonly write: (piece: Uint8Array, options: { readonly at: number }) => number;
    readonly flush: () => void;
    readonly close: () => void;
  }>;
}

const FOLDER = "copies";
/** A copy made longer ago than this, in milliseconds, was handed over or forgotten. */
const OLD = 3_600_000;

/**
 * Writes into a file of the browser's private file system: no more than one piece is in memory at a time. It exists in a
 * worker only; throws where the browser has none, or no room.
 */
export async function fileSink(): Promise<Sink> {
  const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle(FOLDER, { create: true });
  await sweep(folder);
  const name = crypto.randomUUID();
  const handle = await folder.getFileHandle(name, { create: true });
  const file = await (handle as FileSystemFileHandle & Direct).createSyncAccessHandle();
  let at = 0;
  return {
    write: (piece) => {
      const written = file.write(piece, { at });
      at += written;
      if (written < piece.length) throw new DOMException("the disk took less than it was given", "QuotaExceededError");
    },
    finish: async () => {
      file.flush();
      file.close();
      return handle.getFile();
    },
    giveUp: async () => {
      file.close();
      await folder.removeEntry(name).catch(() => undefined);
    },
  };
}

/** Keeps pieces as the browser sees fit, in memory or on its disk. */
export function memorySink(): Sink {
  let whole = new Blob([]);
  return {
    write: (piece) => {
      // A blob of blobs: the page itself holds no bytes of it.
      whole = new Blob([whole, piece as BlobPart]);
    },
    finish: async () => whole,
    giveUp: async () => {
      whole = new Blob([]);
    },
  };
}

/** Throws away copies that lie in the private file system since long. */
export async function sweepCopies(): Promise<void> {
  await sweep(await (await navigator.storage.getDirectory()).getDirectoryHandle(FOLDER));
}

async function sweep(folder: FileSystemDirectoryHandle): Promise<void> {
  for await (const [name, handle] of folder.entries()) {
    if (handle.kind !== "file") continue;
    const { lastModified } = await (handle as FileSystemFileHandle).getFile();
    // One that is still being written is held by whoever writes it and does not go.
    if (Date.now() - lastModified > OLD) await folder.removeEntry(name).catch(() => undefined);
  }
}
