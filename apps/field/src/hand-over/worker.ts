import type { Copy, Made } from "./copy.ts";
import { readCopy } from "./read-copy.ts";
import { type Reason, Refused } from "./refused.ts";
import { fileSink, memorySink } from "./sink.ts";
import { type Job, writeCopy } from "./write-copy.ts";

/** What the worker is asked for: a copy of a job, or what a file holds. */
export type Asked = { readonly write: Job } | { readonly read: Blob };

/** What it says: how far it is, and at last what came of it. */
export type Said =
  | { readonly moved: readonly [done: number, of: number] }
  | { readonly value: Made | Copy }
  | { readonly refused: Reason }
  | { readonly failed: string };

const say = (said: Said) => postMessage(said);
const moved = (done: number, of: number) => say({ moved: [done, of] });

/** Copies are written and read here, so that the screen never waits for it. */
addEventListener("message", ({ data }: MessageEvent<Asked>) => {
  const work = "write" in data ? written(data.write) : readCopy(data.read, moved);
  work.then(
    (value) => say({ value }),
    (error: unknown) =>
      say(
        error instanceof Refused
          ? { refused: error.reason }
          : { failed: error instanceof Error ? `${error.name}: ${error.message}` : String(error) },
      ),
  );
});

async function written(job: Job): Promise<Made> {
  try {
    return await writeCopy(job, await fileSink(), moved);
  } catch (error) {
    if (error instanceof Refused && error.reason === "too-large") throw error;
    // Without such a file, or without room for it, the browser finds another place: a full disk is when a copy is needed.
    return writeCopy(job, memorySink(), moved);
  }
}
