import { discardPhotograph, keepPhotograph, photograph } from "../photographs/files.ts";
import type { Copy, Moved } from "./copy.ts";

/**
 * Keeps the photographs of a copy on this device: all of them, or none that was not here before; resolves to the hashes
 * of those that were not.
 */
export async function keepPhotographs({ photographs }: Copy, moved: Moved): Promise<readonly string[]> {
  const all = [...photographs.values()].reduce((sum, { size }) => sum + size, 0);
  const fresh: string[] = [];
  let done = 0;
  try {
    for (const [sha256, bytes] of photographs) {
      if ((await photograph(sha256)) === undefined) fresh.push(sha256);
      await keepPhotograph(sha256, bytes);
      done += bytes.size;
      moved(done, all);
    }
    return fresh;
  } catch (error) {
    // Nothing would ever name them, and nobody would throw them away.
    for (const sha256 of fresh) await discardPhotograph(sha256);
    throw error;
  }
}
