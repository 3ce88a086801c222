/** Photographs of this device by the hash of their bytes, in the browser's private file system. */
const FOLDER = "photographs";

async function folder(): Promise<FileSystemDirectoryHandle> {
  return (await navigator.storage.getDirectory()).getDirectoryHandle(FOLDER, { create: true });
}

/** Keeps a photograph; resolves once it is written out. */
export async function keepPhotograph(sha256: string, bytes: Blob): Promise<void> {
  const file = await (await folder()).getFileHandle(`${sha256}.jpg`, { create: true });
  const writable = await file.createWritable();
  await writable.write(bytes);
  await writable.close();
}

/** The photograph with this hash; undefined where this device does not have it. */
export async function photograph(sha256: string): Promise<Blob | undefined> {
  try {
    return await (await (await folder()).getFileHandle(`${sha256}.jpg`)).getFile();
  } catch {
    return undefined;
  }
}

/** Throws a photograph away; one that is not here is no failure. */
export async function discardPhotograph(sha256: string): Promise<void> {
  await (await folder()).removeEntry(`${sha256}.jpg`).catch(() => undefined);
}
