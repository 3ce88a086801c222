import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Batch } from "../worker.ts";
import type { Item } from "./sources.ts";
import type { Summary, SummaryOptions } from "./summary.ts";

/** Items that travel to a worker together; single ones would spend more time travelling than being weighed. */
const BATCH_ITEMS = 32;
/** A batch closes early when its text reaches this many characters, so that memory stays bounded with large files. */
const BATCH_CHARACTERS = 2_000_000;
/** Batches under way for each worker: one being weighed, one waiting. */
const AHEAD = 2;

/** The worker beside this module: a source file in development, a bundle once built. */
function workerUrl(): URL {
  return import.meta.url.endsWith(".ts")
    ? new URL("../worker.ts", import.meta.url)
    : new URL("./worker.mjs", import.meta.url);
}

/**
 * Weighs items on all cores and yields their summaries in the order of the items. No more than a fixed number of batches
 * is under way, so memory does not grow with the number of items.
 */
export async function* summariesOf(
  items: AsyncIterable<Item>,
  options: SummaryOptions,
  workers = availableParallelism(),
): AsyncGenerator<Summary> {
  const pool = Array.from({ length: Math.max(1, workers) }, () => new Worker(workerUrl()));
  const settle = new Map<
    number,
    { resolve: (summaries: readonly Summary[]) => void; reject: (error: unknown) => void }
  >();
  for (const worker of pool) {
    worker.on("message", ({ number, summaries }: { number: number; summaries: readonly Summary[] }) => {
      settle.get(number)?.resolve(summaries);
      settle.delete(number);
    });
    worker.on("error", (error) => {
      for (const { reject } of settle.values()) reject(error);
      settle.clear();
    });
  }
  const underWay: Promise<readonly Summary[]>[] = [];
  let number = 0;
  const send = (batch: readonly Item[]) => {
    const current = number;
    number += 1;
    const result = new Promise<readonly Summary[]>((resolve, reject) => settle.set(current, { resolve, reject }));
    // A rejection is taken up when its turn comes; until then it is no unhandled one.
    result.catch(() => undefined);
    pool[current % pool.length]?.postMessage({ number: current, items: batch, options } satisfies Batch);
    underWay.push(result);
  };
  try {
    let batch: Item[] = [];
    let characters = 0;
    for await (const item of items) {
      batch.push(item);
      characters += item.text?.length ?? 0;
      if (batch.length < BATCH_ITEMS && characters < BATCH_CHARACTERS) continue;
      send(batch);
      batch = [];
      characters = 0;
      if (underWay.length >= pool.length * AHEAD) yield* (await underWay.shift()) ?? [];
    }
    if (batch.length > 0) send(batch);
    for (const result of underWay) yield* await result;
  } finally {
    await Promise.all(pool.map((worker) => worker.terminate()));
  }
}
