import { useEffect, useState } from "preact/hooks";

/** What the browser says of the room it gives and of its promise to keep it. */
export interface Storage {
  readonly promised: boolean | undefined;
  readonly usedBytes: number | undefined;
  readonly leftBytes: number | undefined;
}

/** Less room than this is warned of: some fifty photographs. */
const LITTLE = 50_000_000;

export function isLittle({ leftBytes }: Storage): boolean {
  return leftBytes !== undefined && leftBytes < LITTLE;
}

async function look(): Promise<Storage> {
  const manager = navigator.storage as StorageManager | undefined;
  const [promised, estimate] = await Promise.all([
    manager?.persisted?.().catch(() => undefined),
    manager?.estimate?.().catch(() => undefined),
  ]);
  const { usage, quota } = estimate ?? {};
  return {
    promised,
    usedBytes: usage,
    leftBytes: usage === undefined || quota === undefined ? undefined : Math.max(0, quota - usage),
  };
}

/** Asks the browser not to throw jobs away when room is short. Some ask the person, some decide by themselves. */
export async function askToKeep(): Promise<void> {
  await (navigator.storage as StorageManager | undefined)?.persist?.().catch(() => false);
}

/** The state of the storage, looked at again every minute and whenever the app comes back to the front or `asked` changes. */
export function useStorage(asked = 0): Storage | undefined {
  const [storage, setStorage] = useState<Storage>();
  useEffect(() => {
    let left = false;
    const again = () => void look().then((found) => !left && setStorage(found));
    again();
    const timer = setInterval(again, 60_000);
    document.addEventListener("visibilitychange", again);
    return () => {
      left = true;
      clearInterval(timer);
      document.removeEventListener("visibilitychange", again);
    };
  }, [asked]);
  return storage;
}
