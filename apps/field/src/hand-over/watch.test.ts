import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Moved } from "./copy.ts";
import { LONGEST_SILENCE, Stalled, watched } from "./watch.ts";

const never = () => new Promise<never>(() => undefined);
const watch = (signal = new AbortController().signal) => {
  const heard: (readonly [number, number])[] = [];
  return { signal, heard, onMoved: (done: number, of: number) => void heard.push([done, of]) };
};

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("work that is watched", () => {
  test("gives what it gives, and says how far it is", async () => {
    const mine = watch();
    const work = watched(async (moved) => {
      moved(1, 2);
      return "done";
    }, mine);
    expect(await work).toBe("done");
    expect(mine.heard).toEqual([[1, 2]]);
    expect(vi.getTimerCount()).toBe(0);
  });

  test("that never says anything ends as stalled, and its helpers are told", async () => {
    let told: unknown;
    const work = watched((_, over) => {
      over.addEventListener("abort", () => {
        told = over.reason;
      });
      return never();
    }, watch());
    const ended = expect(work).rejects.toThrow(Stalled);
    await vi.advanceTimersByTimeAsync(LONGEST_SILENCE);
    await ended;
    expect(told).toBeInstanceOf(Stalled);
  });

  test("may take as long as it likes while it moves", async () => {
    let move: Moved = () => undefined;
    let end: (value: string) => void = () => undefined;
    const work = watched(
      (moved) =>
        new Promise<string>((done) => {
          move = moved;
          end = done;
        }),
      watch(),
    );
    for (let i = 0; i < 10; i++) {
      await vi.advanceTimersByTimeAsync(LONGEST_SILENCE - 1);
      move(i, 10);
    }
    end("done");
    expect(await work).toBe("done");
  });

  test("that fails, fails", async () => {
    await expect(watched(() => Promise.reject(new Error("broken")), watch())).rejects.toThrow("broken");
    expect(vi.getTimerCount()).toBe(0);
  });
});

describe("work that is called off", () => {
  test("ends at once, and goes no step further", async () => {
    const stop = new AbortController();
    let move: Moved = () => undefined;
    const work = watched((moved) => {
      move = moved;
      return never();
    }, watch(stop.signal));
    const ended = expect(work).rejects.toThrow("called off");
    stop.abort(new Error("called off"));
    await ended;
    expect(() => move(1, 2)).toThrow("called off");
    expect(vi.getTimerCount()).toBe(0);
  });

  test("is not begun where that was before", async () => {
    const stop = new AbortController();
    stop.abort(new Error("called off"));
    const work = vi.fn(never);
    await expect(watched(work, watch(stop.signal))).rejects.toThrow("called off");
    expect(work).not.toHaveBeenCalled();
  });
});
