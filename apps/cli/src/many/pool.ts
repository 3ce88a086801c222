import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Batch } from "../worker.ts";
import type { Item } from "./sources.ts";
import { type Summary, type SummaryOptions, summarise } from "./summary.ts";

/** Items that travel to a worker together; single ones would spend more time travelling than being weighed. */
const BATCH_ITEMS = 32;
/** A batch closes early when it holds this many bytes, so that memory stays bounded with large files. */
const BATCH_BYTES = 1_000_000;
/** Above this many bytes an item is weighed here, where the heap is not held small; such files are rare. */
const LARGE_BYTES = 3_000_000;
/**
 * Heap limits of a worker, MB. Ordinary items need a few; without limits V8 lets garbage pile up to several hundred,
 * since it cannot know that memory is better left alone.
 */
const HEAP = { maxOldGenerationSizeMb: 96, maxYoungGenerationSizeMb: 16 };
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
  const pool = Array.from({ length: Math.max(1, workers) }, () => new Worker(workerUrl(), { resourceLimits: HEAP }));
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
    if (batch.some((item) => (item.bytes?.length ?? 0) > LARGE_BYTES)) {
      underWay.push(Promise.resolve().then(() => batch.map((item) => summarise(item, options))));
      return;
    }
    const current = number;
    number += 1;
    const result = new Promise<readonly Summary[]>((resolve, reject) => settle.set(current, { resolve, reject }));
    // A rejection is taken up when its turn comes; until then it is no unhandled one.
    result.catch(() => undefined);
    // The bytes go over without a copy; they are not needed here any more.
    const bytes = batch.flatMap((item) => (item.bytes === undefined ? [] : [item.bytes.buffer]));
    pool[current % pool.length]?.postMessage({ number: current, items: batch, options } satisfies Batch, bytes);
    underWay.push(result);
  };
  try {
    let batch: Item[] = [];
    let size = 0;
    for await (const item of items) {
      batch.push(item);
      size += item.bytes?.length ?? 0;
      if (batch.length < BATCH_ITEMS && size < BATCH_BYTES) continue;
      send(batch);
      batch = [];
      size = 0;
      if (underWay.length >= pool.length * AHEAD) yield* (await underWay.shift()) ?? [];
    }
    if (batch.length > 0) send(batch);
    for (const result of underWay) yield* await result;
  } finally {
    await Promise.all(pool.map((worker) => worker.terminate()));
  }
}
