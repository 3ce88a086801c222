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
    return { id, failed: ENGINE.failed(error instanceof Error ? error.message : String(error)) };
  }
}
