/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { unzipSync } from "fflate";
import type { BrowserContext, Download, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { WAIT_LIMIT } from "../patience.ts";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, PHONE } from "./app-in-browser.ts";
import { entriesIn } from "./copy-file.ts";
import { largeJob, putPhotographs, soundPhotographs } from "./large-job.ts";

const JOB = "3f0c6a52-0000-4000-8000-000000000001";
/** A machine much slower than this one still makes a copy within this, in milliseconds. */

describe.runIf(needTool("chromium"))("copies of large jobs", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("large-copies");
  });
  afterAll(() => app?.close());

  const patient = async (context: BrowserContext): Promise<Page> => {
    context.setDefaultTimeout(WAIT_LIMIT);
    return app.at(context, "jobs");
  };
  const saved = async (page: Page, button: string): Promise<string> => {
    const [download] = await Promise.all([
      page.waitForEvent("download", { timeout: WAIT_LIMIT }),
      page.getByRole("button", { name: button }).click(),
    ]);
    return (download as Download).path();
  };
  /** Takes a file in as a copy; where the app asks whether it may, it may. */
  const takeIn = async (page: Page, text: string | undefined, file?: string) => {
    await page
      .locator('input[type=file][accept*="good-grounds-job"]')
      .setInputFiles(file ?? { name: "a.json", mimeType: "application/json", buffer: Buffer.from(text ?? "") });
    const allTheSame = page.getByRole("button", { name: "Take it in all the same" });
    await allTheSame.or(page.getByRole("heading", { level: 1, name: "The visit" })).waitFor();
    if (await allTheSame.isVisible()) await allTheSame.click();
    await page.waitForURL(new RegExp(JOB));
    await page.getByRole("heading", { level: 1, name: "The visit" }).waitFor();
  };

  test("the demonstration is saved and says that it was read back", async () => {
    const context = await app.fresh();
    await patient(context);
    const page = await app.at(context, "job", "demonstration", "hand-over");
    const entries = entriesIn(await saved(page, "Save a copy"));
    expect(entries.length).toBeGreaterThan(500);
    await page.getByText("was read back without a fault").waitFor();
    expect(await faults(page)).toEqual([]);
    await context.close();
  });

  test("a house of 30 circuits and 60 photographs is saved, deleted and read back the same", async () => {
    const context = await app.fresh();
    const page = await patient(context);
    const photographs = await putPhotographs(page, 60);
    const before = await soundPhotographs(page);
    expect(before.sound).toHaveLength(60);
    expect(before.bytes / 60).toBeGreaterThan(200_000);
    await takeIn(page, largeJob(JOB, { circuits: 30, readingsEach: 5 }, photographs));

    await app.at(context, "job", JOB, "hand-over");
    const first = await saved(page, "Save a copy");
    const files = unzipSync(readFileSync(first));
    expect(Object.keys(files).filter((name) => name.startsWith("photographs/"))).toHaveLength(60);

    await app.at(context, "jobs");
    await page.getByRole("button", { name: "Delete A large house" }).click();
    const beforeDeleting = await saved(page, "Save the job file");
    expect(entriesIn(beforeDeleting)).toEqual(entriesIn(first));
    await page.getByRole("button", { name: "Delete it for good" }).click();
    await page.getByRole("button", { name: "Delete A large house" }).waitFor({ state: "detached" });
    await expect.poll(async () => (await soundPhotographs(page)).sound).toEqual([]);

    await takeIn(page, undefined, beforeDeleting);
    expect(await soundPhotographs(page)).toEqual(before);
    await app.at(context, "job", JOB, "hand-over");
    expect(entriesIn(await saved(page, "Save a copy"))).toEqual(entriesIn(first));
    await context.close();
  });

  test("stopped while it is made, it leaves nothing behind and can be made again", async () => {
    const context = await app.fresh();
    const page = await withWorker(context, app, "moved");
    await page.getByRole("button", { name: "Save a copy" }).click();
    await page.getByText("Making the copy: 1 MB of 2 MB").waitFor();
    expect(await faults(page)).toEqual([]);
    await page.getByRole("button", { name: "Stop" }).click();
    await page.getByText("Stopped. Nothing was changed.").waitFor();
    await page.evaluate(() => (window as unknown as { giveBackWorker: () => void }).giveBackWorker());
    entriesIn(await saved(page, "Save a copy"));
    await context.close();
  });

  test("a worker that does not answer is not waited for: the page makes the copy", async () => {
    const context = await app.fresh();
    const page = await withWorker(context, app, "nothing");
    const download = page.waitForEvent("download", { timeout: WAIT_LIMIT });
    await page.getByRole("button", { name: "Save a copy" }).click();
    await silence(page);
    expect(entriesIn(await (await download).path()).length).toBeGreaterThan(500);
    await context.close();
  });

  test("where nothing answers it says so, and the record alone can be saved", async () => {
    const context = await app.fresh();
    const page = await withWorker(context, app, "nothing");
    await page.evaluate(() => {
      Blob.prototype.arrayBuffer = () => new Promise(() => undefined);
    });
    await page.getByRole("button", { name: "Save a copy" }).click();
    await silence(page);
    // The page in its place falls silent as well, whenever it came to that.
    const told = page.getByText("The copy could not be made: nothing moved for half a minute.");
    await expect
      .poll(
        async () => {
          await page.clock.fastForward(31_000);
          return told.isVisible();
        },
        { timeout: WAIT_LIMIT },
      )
      .toBe(true);
    expect(await faults(page)).toEqual([]);
    expect(entriesIn(await saved(page, "Save the record without photographs")).length).toBeGreaterThan(500);
    await page.getByText("A file with the record alone was saved").waitFor();
    await context.close();
  });

  test.each<readonly [string, string]>([
    ["has no room", 'throw new DOMException("no room", "QuotaExceededError")'],
    ["keeps something else", "piece = piece.map((byte) => byte ^ 1); return write.call(this, piece, where)"],
  ])("a private file system that %s does not keep a job from being copied", async (_, does) => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await patient(context);
    const stub = `const { write } = FileSystemSyncAccessHandle.prototype;
      FileSystemSyncAccessHandle.prototype.write = function (piece, where) { ${does}; };`;
    await context.route("**/copies.js", async (route) => {
      const real = await route.fetch();
      await route.fulfill({ response: real, body: `${stub}\n${await real.text()}` });
    });
    const page = await app.at(context, "job", "demonstration", "hand-over");
    expect(entriesIn(await saved(page, "Save a copy")).length).toBeGreaterThan(500);
    await page.getByText("was read back without a fault").waitFor();
    await context.close();
  });

  test("where the device has no room for its photographs nothing of a copy stays", async () => {
    const context = await app.fresh();
    const page = await patient(context);
    const photographs = await putPhotographs(page, 4);
    await takeIn(page, largeJob(JOB, { circuits: 2, readingsEach: 2 }, photographs));
    await app.at(context, "job", JOB, "hand-over");
    const file = await saved(page, "Save a copy");

    const other = await app.fresh();
    const there = await patient(other);
    await there.evaluate(() => {
      const { createWritable } = FileSystemFileHandle.prototype;
      let room = 2;
      FileSystemFileHandle.prototype.createWritable = function (...args) {
        if (room-- <= 0) throw new DOMException("no room", "QuotaExceededError");
        return createWritable.apply(this, args);
      };
    });
    const chooser = there.locator('input[type=file][accept*="good-grounds-job"]');
    await chooser.setInputFiles(file);
    await there.getByText("There is no room on this device for what the copy holds").waitFor();
    expect((await soundPhotographs(there)).sound).toEqual([]);
    await there.reload();
    expect(await there.getByText("A large house").count()).toBe(0);
    // Once there is room it comes in.
    await takeIn(there, undefined, file);
    expect((await soundPhotographs(there)).sound).toEqual([...photographs].sort());
    await Promise.all([context.close(), other.close()]);
  });

  test("on a phone it goes to the share sheet, and waits for a touch where the last was too long ago", async () => {
    const context = await app.fresh();
    await context.addInitScript(() => {
      Object.assign(navigator, {
        canShare: () => true,
        share: async ({ files }: { readonly files: readonly File[] }) => {
          const [file] = files;
          const head = new Uint8Array(await (file as File).slice(0, 2).arrayBuffer());
          Object.assign(window, { shared: [file?.name, file?.size, String.fromCharCode(...head)] });
        },
      });
      Object.defineProperty(navigator, "userActivation", { value: { isActive: false }, configurable: true });
    });
    await patient(context);
    const page = await app.at(context, "job", "demonstration", "hand-over");
    await page.getByRole("button", { name: "Save a copy" }).tap();
    const send = page.getByRole("button", { name: "Send or save the copy" });
    await send.waitFor();
    expect(await page.evaluate(() => "shared" in window)).toBe(false);
    await page.evaluate(() => Object.defineProperty(navigator, "userActivation", { value: { isActive: true } }));
    await send.tap();
    await page.waitForFunction(() => "shared" in window);
    const [name, size, head] = await page.evaluate(
      () => (window as unknown as { shared: readonly [string, number, string] }).shared,
    );
    expect(name).toMatch(/\.good-grounds-job$/);
    expect(size).toBeGreaterThan(10_000);
    expect(head).toBe("PK");
    await context.close();
  });

  test("the rescue hands out the record where everything else of a copy fails", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await patient(context);
    await context.route(/pieces\/(extent|copier)-/, (route) => route.abort());
    const page = await app.at(context, "job", "demonstration", "extent");
    await page.getByRole("alert").filter({ hasText: "Something went wrong on this screen" }).waitFor();
    expect(entriesIn(await saved(page, "Save the job file")).length).toBeGreaterThan(500);
    await context.close();
  });
});

/** The hand-over of the demonstration, where the worker for copies only says that it moved, or says nothing at all. */
async function withWorker(context: BrowserContext, app: AppInBrowser, says: "moved" | "nothing"): Promise<Page> {
  context.setDefaultTimeout(WAIT_LIMIT);
  await app.at(context, "jobs");
  const page = await app.at(context, "job", "demonstration", "hand-over");
  await page.clock.install();
  await page.evaluate((isMoving) => {
    const Real = Worker;
    class Unending {
      onmessage: ((event: { readonly data: unknown }) => void) | null = null;
      postMessage() {
        Object.assign(window, { isAsked: true });
        if (isMoving) queueMicrotask(() => this.onmessage?.({ data: { moved: [1_000_000, 2_000_000] } }));
      }
      terminate() {
        this.onmessage = null;
      }
    }
    const instead = new Proxy(Real, {
      construct: (real, [url, options]: [URL, WorkerOptions]) =>
        String(url).endsWith("copies.js") ? new Unending() : new real(url, options),
    });
    Object.assign(window, { Worker: instead, giveBackWorker: () => Object.assign(window, { Worker: Real }) });
  }, says === "moved");
  return page;
}

/** Lets half a minute and a little pass on the page once the worker was asked. */
async function silence(page: Page): Promise<void> {
  await page.waitForFunction(() => (window as unknown as { isAsked?: boolean }).isAsked === true);
  await page.clock.fastForward(31_000);
}
