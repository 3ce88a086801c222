import { engine } from "../../engine/client.ts";
import type { FolderText } from "../../engine/folder-view.ts";
import { keepFolder } from "../../firm/kept.ts";
import { FIRM } from "../../words/firm.ts";

/** How choosing a folder, or taking it off the device, stands. */
export type Taking =
  | { readonly busy: true }
  | { readonly took: string; readonly words: string }
  | { readonly removed: true }
  | { readonly failed: string }
  | { readonly problems: readonly string[] };

/** Reads what was chosen, proves it, and keeps it where nothing is wrong with it. */
export async function takeFolder(chosen: Promise<readonly FolderText[]>): Promise<Taking> {
  let tried: Awaited<ReturnType<typeof engine.tryFolder>>;
  try {
    tried = await engine.tryFolder(await chosen);
  } catch (error) {
    if (!(error instanceof Error)) return { failed: FIRM.failed(String(error)) };
    return { failed: error.name === "NotTexts" ? error.message : FIRM.failed(error.message) };
  }
  if (!tried.isWell) return { problems: tried.problems };
  const { kept, words, writtenAgainst } = tried;
  try {
    await keepFolder(kept);
  } catch (error) {
    return { failed: FIRM.notKept(error instanceof Error ? error.message : String(error)) };
  }
  const written = writtenAgainst === undefined ? "" : ` ${FIRM.written(writtenAgainst)}`;
  return { took: kept.label.name, words: `${words}${written}` };
}
