import { discardPhotograph } from "../photographs/files.ts";
import type { Entry } from "../record/entry.ts";
import { Contradiction } from "../record/session.ts";
import type { Copy } from "./copy.ts";
import { keepPhotographs } from "./keep-photographs.ts";
import { type Watch, watched } from "./watch.ts";

/** Keeps the photographs of a copy and then joins its entries: nothing speaks of a photograph that is not here yet. */
export async function takeIn<T>(copy: Copy, join: (entries: readonly Entry[]) => Promise<T>, watch: Watch): Promise<T> {
  const fresh = await watched((moved) => keepPhotographs(copy, moved), watch);
  try {
    return await join(copy.entries);
  } catch (error) {
    // Refused as a whole: nothing of it stays.
    if (error instanceof Contradiction) for (const sha256 of fresh) await discardPhotograph(sha256);
    throw error;
  }
}
