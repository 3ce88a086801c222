import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { InspectionFile } from "@good-grounds/inspection";
import type { Photograph } from "@good-grounds/report/document";
import { EXIT, Stop } from "./host.ts";
import { reason } from "./reason-of.ts";

/** Bytes that all photographs of a report may take together; the whole of it then stays below 25 MB. */
const MOST = 20e6;

/** The photographs of an inspection that a folder holds, and why some of them are not shown. */
export interface FoundPhotographs {
  readonly found: ReadonlyMap<string, Photograph>;
  readonly notes: readonly string[];
}

/**
 * Photographs are known by the hash of their bytes, whatever the files are called. One that would make the report too
 * large to send is named and not shown: the field app keeps them small.
 */
export async function photographsIn(
  folder: string | undefined,
  { photographs }: InspectionFile,
): Promise<FoundPhotographs> {
  if (folder === undefined) return { found: new Map(), notes: [] };
  const wanted = new Map(photographs.map(({ sha256, name }) => [sha256, name]));
  const share = MOST / Math.max(1, wanted.size);
  const found = new Map<string, Photograph>();
  const notes: string[] = [];
  for (const name of await namesIn(folder)) {
    const bytes = new Uint8Array(await readFile(join(folder, name)));
    const type = typeOf(bytes);
    const hash = createHash("sha256").update(bytes).digest("hex");
    if (type === undefined || !wanted.has(hash)) continue;
    if (bytes.length > share)
      notes.push(
        `${join(folder, name)}: ${bytes.length} bytes, where ${wanted.size} photographs leave ${Math.floor(share)} for each; it is named and not shown.`,
      );
    else found.set(hash, { bytes, type });
    wanted.delete(hash);
  }
  return {
    found,
    notes: [...notes, ...[...wanted.values()].map((name) => `${folder}: no file there is the photograph ${name}.`)],
  };
}

async function namesIn(folder: string): Promise<readonly string[]> {
  try {
    const entries = await readdir(folder, { withFileTypes: true });
    return entries
      .filter((entry) => entry.isFile())
      .map(({ name }) => name)
      .sort();
  } catch (error) {
    throw new Stop(
      EXIT.unreadable,
      `${folder}: cannot be read (${reason(error)}). Name the folder of the photographs.`,
    );
  }
}

/** What an image begins with says what it is. */
function typeOf(bytes: Uint8Array): Photograph["type"] | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return "image/jpeg";
  if (bytes[0] === 0x89 && bytes[1] === 0x50 && bytes[2] === 0x4e) return "image/png";
  return undefined;
}
