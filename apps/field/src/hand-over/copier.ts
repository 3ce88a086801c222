import { photograph } from "../photographs/files.ts";
import type { Entry } from "../record/entry.ts";
import { type Copy, type Made, type Moved, type Picture, photographsIn } from "./copy.ts";
import { readCopy } from "./read-copy.ts";
import { Refused } from "./refused.ts";
import { memorySink } from "./sink.ts";
import { type Watch, watched } from "./watch.ts";
import type { Asked, Said } from "./worker.ts";
import { writeCopy } from "./write-copy.ts";

/** Makes a copy of a job with every photograph this device has of it, and proves it by reading it back. */
export async function makeCopy(job: string, entries: readonly Entry[], watch: Watch): Promise<Made> {
  const pictures = await watched((moved) => picturesOf(entries, moved), watch);
  return workerOrPage(
    { write: { job, entries, pictures } },
    (moved) => writeCopy({ job, entries, pictures }, memorySink(), moved),
    watch,
  );
}

/** What a file holds; throws {@link Refused} where it is no copy, or not as it was written. */
export function openCopy(file: Blob, watch: Watch): Promise<Copy> {
  return workerOrPage({ read: file }, (moved) => readCopy(file, moved), watch);
}

async function picturesOf(entries: readonly Entry[], moved: Moved): Promise<readonly Picture[]> {
  const pictures: Picture[] = [];
  for (const sha256 of photographsIn(entries)) {
    const bytes = await photograph(sha256);
    if (bytes !== undefined) pictures.push({ sha256, bytes });
    // How many bytes there are is known only when all of them were found.
    moved(0, 0);
  }
  return pictures;
}

/** Lets the worker do it; where that does not start, breaks down or falls silent, the page does it itself. */
async function workerOrPage<T extends Made | Copy>(
  asked: Asked,
  onPage: (moved: Moved) => Promise<T>,
  watch: Watch,
): Promise<T> {
  try {
    return await watched((moved, over) => inWorker(asked, moved, over) as Promise<T>, watch);
  } catch (error) {
    if (watch.signal.aborted || error instanceof Refused) throw error;
    return watched(onPage, watch);
  }
}

function inWorker(asked: Asked, moved: Moved, over: AbortSignal): Promise<Made | Copy> {
  return new Promise((done, failed) => {
    const worker = new Worker(new URL("copies.js", document.baseURI), { type: "module" });
    // However it ends, called off among it, the worker ends with it.
    over.addEventListener("abort", () => worker.terminate());
    worker.onerror = ({ message }) => failed(new Error(message || "the worker for copies did not start"));
    worker.onmessageerror = () => failed(new Error("the worker for copies could not be understood"));
    worker.onmessage = ({ data }: MessageEvent<Said>) => {
      if ("moved" in data) moved(...data.moved);
      else if ("value" in data) done(data.value);
      else failed("refused" in data ? new Refused(data.refused) : new Error(data.failed));
    };
    worker.postMessage(asked);
  });
}
