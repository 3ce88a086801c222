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
  const pool = Array.from({ length: Math.max(1, workers) }, () => new Hand(options));
  const underWay: Promise<readonly Summary[]>[] = [];
  let number = 0;
  const send = (batch: readonly Item[]) => {
    const large = batch.some((item) => (item.bytes?.length ?? 0) > LARGE_BYTES);
    const hand = large ? undefined : pool[number++ % pool.length];
    const result = hand?.weigh(batch) ?? Promise.resolve().then(() => weighHere(batch, options));
    // A rejection is taken up when its turn comes; until then it is no unhandled one.
    result.catch(() => undefined);
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
    await Promise.all(pool.map((hand) => hand.release()));
  }
}

function weighHere(batch: readonly Item[], options: SummaryOptions): readonly Summary[] {
  return batch.map((item) => summarise(item, options));
}

interface Waiting {
  readonly batch: readonly Item[];
  readonly resolve: (summaries: readonly Summary[]) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * A worker with the batches it has not answered yet. An item can be small and still unfold to more than a worker's heap
 * holds; the worker then dies, what it had is weighed here, and another takes its place.
 */
class Hand {
  readonly #options: SummaryOptions;
  readonly #waiting = new Map<number, Waiting>();
  #number = 0;
  #worker: Worker;

  constructor(options: SummaryOptions) {
    this.#options = options;
    this.#worker = this.#start();
  }

  weigh(batch: readonly Item[]): Promise<readonly Summary[]> {
    const number = this.#number++;
    return new Promise((resolve, reject) => {
      this.#waiting.set(number, { batch, resolve, reject });
      // The bytes are copied: they are still needed here should the worker die.
      this.#worker.postMessage({ number, items: batch, options: this.#options } satisfies Batch);
    });
  }

  async release(): Promise<void> {
    await this.#worker.terminate();
  }

  #start(): Worker {
    const worker = new Worker(workerUrl(), { resourceLimits: HEAP });
    worker.on("message", ({ number, summaries }: { number: number; summaries: readonly Summary[] }) => {
      this.#waiting.get(number)?.resolve(summaries);
      this.#waiting.delete(number);
    });
    worker.on("error", (error: NodeJS.ErrnoException) => {
      const left = [...this.#waiting.values()];
      this.#waiting.clear();
      if (error.code !== "ERR_WORKER_OUT_OF_MEMORY") {
        for (const { reject } of left) reject(error);
        return;
      }
      this.#worker = this.#start();
      for (const { batch, resolve, reject } of left) {
        try {
          resolve(weighHere(batch, this.#options));
        } catch (fault) {
          reject(fault);
        }
      }
    });
    return worker;
  }
}
