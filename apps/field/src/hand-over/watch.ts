import type { Moved } from "./copy.ts";

/** Work that says nothing for so long, in milliseconds, is taken to have stopped. */
export const LONGEST_SILENCE = 30_000;

/** Nothing moved for {@link LONGEST_SILENCE}. */
export class Stalled extends Error {
  override name = "Stalled";
}

export interface Watch {
  /** Calls the work off. */
  readonly signal: AbortSignal;
  /** Hears how far it is. */
  readonly onMoved: Moved;
}

/** Runs work that says how far it is; rejects when it falls silent or is called off, whether or not it ever ends. */
export function watched<T>(
  work: (moved: Moved, over: AbortSignal) => Promise<T>,
  { signal, onMoved }: Watch,
): Promise<T> {
  return new Promise((done, failed) => {
    const over = new AbortController();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const end = (how: () => void, reason?: unknown) => {
      clearTimeout(timer);
      signal.removeEventListener("abort", calledOff);
      over.abort(reason);
      how();
    };
    const calledOff = () => end(() => failed(signal.reason), signal.reason);
    const again = () => {
      clearTimeout(timer);
      const stalled = new Stalled("nothing moved any more");
      timer = setTimeout(() => end(() => failed(stalled), stalled), LONGEST_SILENCE);
    };
    const moved: Moved = (bytes, of) => {
      // Work that goes on after its end was told is stopped at its next step.
      over.signal.throwIfAborted();
      again();
      onMoved(bytes, of);
    };
    if (signal.aborted) return failed(signal.reason);
    signal.addEventListener("abort", calledOff);
    again();
    work(moved, over.signal).then(
      (value) => end(() => done(value)),
      (error: unknown) => end(() => failed(error)),
    );
  });
}
