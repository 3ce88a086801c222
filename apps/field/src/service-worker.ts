declare const FILES: readonly string[];
declare const VERSION: string;
declare const self: ServiceWorkerGlobalScope;

/** The whole app is kept on the first visit and served from there, with or without a signal. */
const PREFIX = "good-grounds-";
const CACHE = `${PREFIX}${VERSION}`;
/** Large parts that are fetched only when they are asked for. Their names change with their content. */
const ON_REQUEST = "on-request-good-grounds";

self.addEventListener("install", (event) => {
  // "reload" passes by the browser's own cache, which may still hold pieces of an older version.
  const requests = FILES.map((name) => new Request(name, { cache: "reload" }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(requests)));
});

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
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== self.location.origin) return;
  event.respondWith(pathname.includes("/writer/") ? onRequest(request) : ownFile(request));
});

async function ownFile(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const kept =
    request.mode === "navigate" ? await cache.match("./") : await cache.match(request, { ignoreSearch: true });
  return kept ?? (await caches.match(request, { ignoreSearch: true })) ?? fetch(request);
}

async function onRequest(request: Request): Promise<Response> {
  const cache = await caches.open(ON_REQUEST);
  const kept = await cache.match(request);
  if (kept !== undefined) return kept;
  const fetched = await fetch(request);
  if (fetched.ok) await cache.put(request, fetched.clone());
  return fetched;
}

export {};
