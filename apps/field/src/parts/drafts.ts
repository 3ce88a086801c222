import { useEffect, useRef, useState } from "preact/hooks";

/** What is typed and not yet handed to the record. */
const open = new Map<object, () => void>();
const listeners = new Set<() => void>();

const tell = () => {
  for (const listener of listeners) listener();
};

/** Hands everything that is typed to the record now: before an update, and when the app goes to the back. */
export function flushDrafts(): void {
  for (const flush of [...open.values()]) flush();
}

addEventListener("pagehide", flushDrafts);
document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && flushDrafts());

/** Whether something is typed that the record does not have yet. */
export function useDrafting(): boolean {
  const [drafting, setDrafting] = useState(open.size > 0);
  useEffect(() => {
    const look = () => setDrafting(open.size > 0);
    look();
    listeners.add(look);
    return () => void listeners.delete(look);
  }, []);
  return drafting;
}

/** Typing is written after a pause this long, and at once when the field is left. */
const PAUSE = 400;

interface Draft {
  readonly text: string;
  readonly type: (text: string) => void;
  readonly leave: () => void;
}

/** The text of a field: as recorded, or as it is being typed. */
export function useDraft(recorded: string, write: (text: string) => void): Draft {
  const [typed, setTyped] = useState<string>();
  const state = useRef({ typed: undefined as string | undefined, timer: 0, write });
  state.current.write = write;
  const flush = () => {
    clearTimeout(state.current.timer);
    if (!open.delete(state)) return;
    if (state.current.typed !== undefined) state.current.write(state.current.typed);
    tell();
  };
  // Leaving the screen must not lose what was typed.
  useEffect(() => flush, []);
  return {
    text: typed ?? recorded,
    type: (text) => {
      state.current.typed = text;
      setTyped(text);
      open.set(state, flush);
      tell();
      clearTimeout(state.current.timer);
      state.current.timer = window.setTimeout(flush, PAUSE);
    },
    leave: () => {
      flush();
      state.current.typed = undefined;
      setTyped(undefined);
    },
  };
}
