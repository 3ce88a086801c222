// Serves a folder on this machine only: the field app on `npm start`, and to the browser in its tests.
import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, sep } from "node:path";
import { HEADERS, PAGE_HEADERS } from "../../apps/field/policy.mjs";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".txt": "text/plain; charset=utf-8",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
};

/** The file that a request asks for, or undefined where it is none of this folder. */
export function fileFor(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return undefined;
  }
  if (path.includes("\0")) return undefined;
  const file = normalize(join(folder, path.endsWith("/") ? `${path}index.html` : path));
  if (!file.startsWith(normalize(folder + sep))) return undefined;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/**
 * Serves a folder; resolves to its address and how to stop. The port asked for is tried first and then the next few: what
 * the browser keeps belongs to the address, so it should be the same every time. Port 0 takes any that is free.
 */
export async function serve(folder, { port = 0, tries = 1 } = {}) {
  const server = createServer((request, response) => {
    const file = request.method === "GET" || request.method === "HEAD" ? fileFor(folder, request.url) : undefined;
    if (file === undefined) {
      response.writeHead(404, { "content-type": "text/plain" }).end("not here");
      return;
    }
    response.writeHead(200, {
      "content-type": types[extname(file)] ?? "application/octet-stream",
      "cache-control": "no-cache",
      ...HEADERS,
      ...(extname(file) === ".html" ? PAGE_HEADERS : {}),
    });
    if (request.method === "HEAD") response.end();
    else
      createReadStream(file)
        .on("error", () => response.destroy())
        .pipe(response);
  });
  await listen(server, port, tries);
  return {
    address: `http://localhost:${server.address().port}/`,
    stop: () =>
      new Promise((done) => {
        server.close(done);
        server.closeAllConnections();
      }),
  };
}

async function listen(server, port, tries) {
  for (let attempt = 0; ; attempt++) {
    try {
      await new Promise((done, failed) => {
        server.once("error", failed);
        server.listen(port === 0 ? 0 : port + attempt, "localhost", () => {
          server.off("error", failed);
          done();
        });
      });
      return;
    } catch (error) {
      if (error.code !== "EADDRINUSE" || attempt + 1 >= tries) throw error;
    }
  }
}
