/// <reference lib="webworker" />
import { ENGINE } from "../words/engine.ts";
import type { Reply, Request } from "./protocol.ts";
import { SERVICE } from "./service/index.ts";

/** The engine: judging runs here, so that the screen never waits for it. */
addEventListener("message", ({ data }: MessageEvent<Request>) => {
  void answer(data).then((reply) => postMessage(reply));
});

async function answer({ id, name, args }: Request): Promise<Reply> {
  try {
    const service = SERVICE[name] as (...args: readonly unknown[]) => unknown;
    return { id, value: await service(...args) };
  } catch (error) {
    return { id, failed: ENGINE.failed(error instanceof Error ? error.message : String(error)) };
  }
}
