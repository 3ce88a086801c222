/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import type { BrowserContext } from "playwright-core";
import type { AppInBrowser } from "./app-in-browser.ts";

/** Something else runs in the worker that has the files, before its own program. */
export async function filesWith({ folder }: AppInBrowser, context: BrowserContext, before: string): Promise<void> {
  const own = readFileSync(`${folder}/job-files.js`, "utf8");
  await context.route("**/job-files.js", (route) =>
    route.fulfill({ contentType: "text/javascript", body: `${before}\n${own}` }),
  );
}

/** The files of jobs refuse to be written to as long as the page says so. */
export function filesRefuse(app: AppInBrowser, context: BrowserContext): Promise<void> {
  return filesWith(
    app,
    context,
    `const { write } = FileSystemSyncAccessHandle.prototype;
    let refused = false;
    globalThis.heard = new BroadcastChannel("refuse");
    heard.onmessage = ({ data }) => { refused = data; };
    FileSystemSyncAccessHandle.prototype.write = function (...given) {
      if (refused) throw new DOMException("no room", "QuotaExceededError");
      return write.apply(this, given);
    };`,
  );
}

/** In the page: neither store takes anything, or both do again. */
export function refuse(refused: boolean): void {
  const { prototype } = IDBObjectStore as unknown as { prototype: IDBObjectStore & { taken?: IDBObjectStore["put"] } };
  prototype.taken ??= prototype.put;
  prototype.put = refused
    ? () => {
        throw new DOMException("no room", "QuotaExceededError");
      }
    : prototype.taken;
  new BroadcastChannel("refuse").postMessage(refused);
}
