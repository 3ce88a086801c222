import { hashOf } from "./hand-over/hash.ts";
import { FOLDER, isPart, PARTS } from "./writer/parts.ts";

/** Every file of the app with the SHA-256 of its bytes. */
declare const FILES: Readonly<Record<string, string>>;
declare const VERSION: string;
declare const self: ServiceWorkerGlobalScope;

/** The whole app is kept on the first visit and served from there, with or without a signal. */
const PREFIX = "good-grounds-";
const CACHE = `${PREFIX}${VERSION}`;
/** Large parts that are fetched only when they are asked for. */
const ON_REQUEST = "on-request-good-grounds";

self.addEventListener("install", (event) => {
  event.waitUntil(install());
});

/** Keeps every file, or none where one is not what was built: the next visit tries anew. */
async function install(): Promise<void> {
  const files = await Promise.all(
    Object.entries(FILES).map(async ([name, hash]) => {
      // "reload" passes by the browser's own cache, which may still hold pieces of an older version.
      const response = await fetch(new Request(name, { cache: "reload" }));
      const bytes = await response.clone().arrayBuffer();
      if (!response.ok || (await hashOf(bytes)) !== hash) throw new Error(`${name} came as something else`);
      return [name, response] as const;
    }),
  );
  const cache = await caches.open(CACHE);
  await Promise.all(files.map(([name, response]) => cache.put(name, response)));
}

self.addEventListener("message", (event) => {
  if (event.data === "take over") event.waitUntil(self.skipWaiting());
});

self.addEventListener("activate", (event) => {
  event.waitUntil(tidy().then(() => self.clients.claim()));
});

/** The version before stays: another tab may still run it and ask for one of its pieces. */
async function tidy(): Promise<void> {
  const older = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(older.slice(0, -1).map((name) => caches.delete(name)));
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin } = new URL(request.url);
  if (request.method !== "GET" || origin !== self.location.origin) return;
  const part = PARTS.find((name) => request.url === new URL(FOLDER + name, self.registration.scope).href);
  event.respondWith(part === undefined ? ownFile(request) : onRequest(part, request));
});

async function ownFile(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const kept =
    request.mode === "navigate" ? await cache.match("./") : await cache.match(request, { ignoreSearch: true });
  return kept ?? (await caches.match(request, { ignoreSearch: true })) ?? fetch(request);
}

/** A part of the report writer, from the device or fetched; only what it should be is kept, and only that is served. */
async function onRequest(name: string, request: Request): Promise<Response> {
  const cache = await caches.open(ON_REQUEST);
  const kept = await cache.match(request);
  if (kept !== undefined) {
    if (await isPart(name, await kept.clone().arrayBuffer())) return kept;
    await cache.delete(request);
  }
  // "reload" passes by what the browser itself may have kept of a wrong answer.
  const fetched = await fetch(new Request(request.url, { cache: "reload" }));
  // Where it is something else, the page finds the same and says so.
  if (fetched.ok && (await isPart(name, await fetched.clone().arrayBuffer())))
    await cache.put(request, fetched.clone());
  return fetched;
}
