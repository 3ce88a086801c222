import { ENGINE } from "../words/engine.ts";
import type { Reply, Request } from "./protocol.ts";
import { openService } from "./service/index.ts";

const service = openService();

/** The engine: judging runs here, so that the screen never waits for it. */
addEventListener("message", ({ data }: MessageEvent<Request>) => {
  void answer(data).then((reply) => postMessage(reply));
});

async function answer({ id, name, args }: Request): Promise<Reply> {
  try {
    const serve = service[name] as (...args: readonly unknown[]) => unknown;
    return { id, value: await serve(...args) };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    // What could not be fetched says so in its own words: nothing is wrong with the job.
    const isNotFetched = error instanceof Error && error.name === "NotFetched";
    return { id, failed: isNotFetched ? reason : ENGINE.failed(reason) };
  }
}
