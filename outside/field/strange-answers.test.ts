/// <reference lib="dom" />
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { WAIT_LIMIT } from "../patience.ts";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults } from "./app-in-browser.ts";

const SIGN_IN = "<!doctype html><title>Sign in</title><p>Sign in to use this network.</p>";

describe.runIf(needTool("chromium"))(
  "what is remembered or comes over the network and is not what it should be",
  () => {
    let app: AppInBrowser;
    beforeAll(async () => {
      app = await appInBrowser("strange");
    });
    afterAll(() => app?.close());

    const visited = async (): Promise<{ readonly context: BrowserContext; readonly page: Page }> => {
      const context = await app.fresh();
      context.setDefaultTimeout(WAIT_LIMIT);
      const page = await app.at(context, "job", "demonstration", "hand-over");
      await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
      return { context, page };
    };
    const report = async (page: Page, button: string): Promise<Buffer> => {
      const download = page.waitForEvent("download", { timeout: WAIT_LIMIT });
      await page.getByRole("button", { name: button }).click();
      return readFileSync(await (await download).path());
    };
    const listStands = async (page: Page) => {
      await page.getByRole("heading", { level: 1, name: "Jobs" }).waitFor();
      await page.getByText("The place the app was left at cannot be read").waitFor();
      expect(await faults(page)).toEqual([]);
      await page.getByRole("link", { name: /demonstration/ }).click();
      await page.getByRole("heading", { level: 1, name: "The visit" }).waitFor();
    };

    test("a remembered place that cannot be gone to: the app opens at the list of jobs and says so", async () => {
      const { context, page } = await visited();
      const places: readonly unknown[] = [
        // Cut off in the middle of a letter.
        { hash: "#/job/demonstration/observations/%E0%A4%A" },
        { hash: "https://example.invalid/" },
        { hash: 5 },
        null,
        { hash: "#/jobs", field: {} },
      ];
      let last = page;
      for (const place of places) {
        await last.evaluate(remember, place);
        await last.close();
        last = await context.newPage();
        await last.goto(app.address);
        await listStands(last);
      }
      // Once it was told, it is forgotten.
      await last.close();
      const after = await context.newPage();
      await after.goto(app.address);
      await after.getByRole("heading", { level: 1, name: "The visit" }).waitFor();
      expect(await after.getByText("The place the app was left at cannot be read").count()).toBe(0);
      await context.close();
    });

    test("an address that cannot be read, followed or typed", async () => {
      const { context, page } = await visited();
      await page.evaluate(() => {
        location.hash = "#/job/%E0%A4%A";
      });
      await listStands(page);
      await page.goto(`${app.address}#/job/%E0%A4%A`);
      await page.reload();
      await listStands(page);
      await context.close();
    });

    test("a sign-in page in place of the report writer is told, not kept, and the report comes once it is gone", async () => {
      const { context, page } = await visited();
      await app.stopServer();
      const portal = createServer((_, response) => {
        response.writeHead(200, { "content-type": "text/html", "cache-control": "max-age=86400" }).end(SIGN_IN);
      });
      await new Promise<void>((done) => portal.listen(Number(new URL(app.address).port), "localhost", done));
      try {
        await page.getByRole("button", { name: "Make the PDF on this device" }).click();
        await page.getByText("such as the sign-in page of a network").waitFor();
        expect(await faults(page)).toEqual([]);
      } finally {
        portal.closeAllConnections();
        await new Promise((done) => portal.close(done));
        await app.startServer();
      }
      expect((await report(page, "Try the PDF again")).subarray(0, 5).toString()).toBe("%PDF-");
      // It is kept now, and needs no signal.
      await page.reload();
      await app.stopServer();
      try {
        expect((await report(page, "Make the PDF on this device")).subarray(0, 5).toString()).toBe("%PDF-");
      } finally {
        await app.startServer();
      }
      await context.close();
    });

    test("a sign-in page that an older version kept as the layout engine is thrown away", async () => {
      const { context, page } = await visited();
      await page.evaluate(async (text) => {
        const cache = await caches.open("on-request-good-grounds");
        for (const name of ["layout.wasm", "regular.ttf", "italic.ttf", "semibold.ttf", "bold.ttf"])
          await cache.put(`writer/${name}`, new Response(text, { headers: { "content-type": "text/html" } }));
      }, SIGN_IN);
      expect((await report(page, "Make the PDF on this device")).subarray(0, 5).toString()).toBe("%PDF-");
      await context.close();
    });

    test("a sign-in page in place of one piece of the app is not kept as the app", async () => {
      const piece = readdirSync(`${app.folder}/pieces`).find((name) => name.startsWith("extent-"));
      const path = `${app.folder}/pieces/${piece}`;
      const right = readFileSync(path);
      const context = await app.fresh();
      context.setDefaultTimeout(WAIT_LIMIT);
      try {
        writeFileSync(path, SIGN_IN);
        const page = await app.at(context, "jobs");
        expect(await page.evaluate(installed)).toBe("refused");
      } finally {
        writeFileSync(path, right);
      }
      const [page] = context.pages() as [Page];
      await page.reload();
      await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
      await app.stopServer();
      try {
        await app.at(context, "job", "demonstration", "extent");
        await page.getByLabel("What is inspected").waitFor();
      } finally {
        await app.startServer();
      }
      await context.close();
    });
  },
);

/** Makes the device remember something as the place it was left at. */
function remember(place: unknown): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open("good-grounds");
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const change = opening.result.transaction("settings", "readwrite");
      change.objectStore("settings").put(place, "place");
      change.oncomplete = () => done();
      change.onerror = () => failed(change.error);
    };
  });
}

/** Whether the app is taken for installed once every attempt that was begun has ended. */
async function installed(): Promise<"kept" | "refused"> {
  const registration = await navigator.serviceWorker.register("service-worker.js").catch(() => undefined);
  const worker = registration?.installing ?? registration?.waiting ?? registration?.active;
  if (worker === undefined || worker === null) return "refused";
  await new Promise<void>((done) => {
    const look = () => (worker.state === "activated" || worker.state === "redundant") && done();
    worker.addEventListener("statechange", look);
    look();
  });
  return worker.state === "activated" ? "kept" : "refused";
}
