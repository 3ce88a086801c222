import { parentPort } from "node:worker_threads";
import type { Item } from "./many/sources.ts";
import { type SummaryOptions, summarise } from "./many/summary.ts";

/** A batch of items for one worker; results come back under the same number. */
export interface Batch {
  readonly number: number;
  readonly items: readonly Item[];
  readonly options: SummaryOptions;
}

parentPort?.on("message", ({ number, items, options }: Batch) => {
  parentPort?.postMessage({ number, summaries: items.map((item) => summarise(item, options)) });
});
