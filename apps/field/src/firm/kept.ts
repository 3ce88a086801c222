import { useEffect, useState } from "preact/hooks";
import type { KeptFolder } from "../engine/folder-view.ts";
import { keepTwice, keptTwice } from "../record/kept-twice.ts";

const NAME = "firm-topics";

/** Other tabs of the app hear of another folder. */
const channel = typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel(NAME);
const listeners = new Set<() => void>();
let known: Promise<KeptFolder | undefined> | undefined;

channel?.addEventListener("message", () => changed());

function changed(): void {
  known = undefined;
  for (const listener of [...listeners]) listener();
}

/** The firm's folder of topics and standing views on this device. */
export function keptFolder(): Promise<KeptFolder | undefined> {
  known ??= keptTwice<KeptFolder>(NAME);
  return known;
}

/** Keeps a folder in place of the one before, or takes it off the device with null. */
export async function keepFolder(folder: KeptFolder | null): Promise<void> {
  await keepTwice(NAME, folder);
  channel?.postMessage("changed");
  changed();
}

/** Calls back whenever another folder is kept, in this tab or another. */
export function listenToFolder(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The folder on this device; "unread" until that is known. Drawn again when it is another. */
export function useKeptFolder(): KeptFolder | undefined | "unread" {
  const [kept, setKept] = useState<KeptFolder | undefined | "unread">("unread");
  useEffect(() => {
    let left = false;
    const look = () =>
      keptFolder().then(
        (found) => !left && setKept(found),
        () => !left && setKept(undefined),
      );
    void look();
    const stop = listenToFolder(() => void look());
    return () => {
      left = true;
      stop();
    };
  }, []);
  return kept;
}
