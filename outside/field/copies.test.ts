/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, kept, newJob, PHONE } from "./app-in-browser.ts";
import { type CopiedEntry, entriesIn } from "./copy-file.ts";
import { filesRefuse, filesWith, refuse } from "./refusing-stores.ts";

const CLIENT = "Name of the client";
const REASON = "Why the inspection is wanted";
const ALTERATIONS = "Alterations and additions";

describe.runIf(needTool("chromium"))("copies of one job", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("copies");
  });
  afterAll(() => app?.close());

  const jobOf = (page: Page) => new URL(page.url()).hash.split("/")[2] as string;
  const write = async (page: Page, label: string, text: string) => {
    await page.getByLabel(label).fill(text);
    await page.getByLabel(label).blur();
    await kept(page);
  };
  const handOver = (context: BrowserContext, job: string) => app.at(context, "job", job, "hand-over");
  const saved = async (page: Page, button: string): Promise<string> => {
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: button }).click();
    return (await download).path();
  };
  const join = async (page: Page, file: string | { name: string; mimeType: string; buffer: Buffer }) => {
    const section = page.getByRole("region", { name: "Join a colleague's copy" });
    const chooser = page.locator('input[type=file][accept*="good-grounds-job"]');
    await chooser.setInputFiles(file);
    return section.or(page.locator("main"));
  };
  /** Every change of the job, in the words of the history. */
  const history = async (page: Page): Promise<readonly string[]> => {
    await page.getByRole("button", { name: "History" }).click();
    return page.locator("ul.rows li").evaluateAll((rows) => rows.map((row) => row.textContent ?? ""));
  };

  test("two tabs that write at once end with the same, and nothing of either is gone", async () => {
    const context = await app.fresh();
    const one = await newJob(app, context);
    const other = await context.newPage();
    await other.goto(one.url());
    await other.getByLabel(CLIENT).waitFor();
    await Promise.all([
      (async () => {
        for (let i = 0; i < 6; i++) await one.getByLabel(ALTERATIONS).fill(`one ${i}`);
        await one.getByLabel(ALTERATIONS).blur();
      })(),
      (async () => {
        for (let i = 0; i < 6; i++) await other.getByLabel(REASON).fill(`other ${i}`);
        await other.getByLabel(REASON).blur();
      })(),
    ]);
    for (const page of [one, other]) {
      await expect.poll(() => page.getByLabel(ALTERATIONS).inputValue()).toBe("one 5");
      await expect.poll(() => page.getByLabel(REASON).inputValue()).toBe("other 5");
      await kept(page);
    }
    await one.reload();
    expect(await one.getByLabel(ALTERATIONS).inputValue()).toBe("one 5");
    expect(await one.getByLabel(REASON).inputValue()).toBe("other 5");
    await context.close();
  });

  test("a full disk is told, nothing is lost, and it is kept once there is room", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await filesRefuse(app, context);
    const page = await newJob(app, context);
    await kept(page);
    await page.evaluate(refuse, true);
    await page.getByLabel(CLIENT).fill("A. Example");
    await page.getByLabel(CLIENT).blur();
    await page.getByRole("alert").filter({ hasText: "not kept: no room left" }).waitFor();
    expect(await page.getByLabel(CLIENT).inputValue()).toBe("A. Example");
    // Leaving the job does not give it up: the list of jobs says so, and the job is as it was left.
    await page.getByRole("link", { name: "Back: The visit" }).click();
    await page.getByRole("link", { name: "Back: Jobs" }).click();
    await page.getByRole("heading", { level: 1, name: "Jobs" }).waitFor();
    await page.getByRole("alert").filter({ hasText: "not kept" }).waitFor();
    expect(await faults(page)).toEqual([]);
    await page.goBack();
    await page.getByRole("link", { name: /^Brief/ }).click();
    expect(await page.getByLabel(CLIENT).inputValue()).toBe("A. Example");
    expect(await page.locator('[data-kept="true"]').count()).toBe(0);
    await page.evaluate(refuse, false);
    await kept(page);
    await page.reload();
    expect(await page.getByLabel(CLIENT).inputValue()).toBe("A. Example");
    await context.close();
  });

  test("storage that is emptied under an open job is filled again with all of it", async () => {
    const context = await app.fresh();
    const page = await newJob(app, context);
    await write(page, CLIENT, "A. Example");
    const devtools = await context.newCDPSession(page);
    await devtools.send("Storage.clearDataForOrigin", {
      origin: new URL(app.address).origin,
      storageTypes: "indexeddb",
    });
    await page.getByLabel(REASON).fill("before letting");
    await page.getByLabel(REASON).blur();
    await kept(page);
    await page.reload();
    expect(await page.getByLabel(CLIENT).inputValue()).toBe("A. Example");
    expect(await page.getByLabel(REASON).inputValue()).toBe("before letting");
    await context.close();
  });

  test("a clock set back an hour between two changes changes neither what stands nor the order of the history", async () => {
    const context = await app.fresh();
    const page = await newJob(app, context);
    await page.clock.install({ time: new Date("2026-11-01T10:00:00Z") });
    await page.reload();
    await write(page, CLIENT, "Written first");
    await page.clock.setSystemTime(new Date("2026-11-01T09:00:00Z"));
    await write(page, CLIENT, "Written second");
    await page.reload();
    expect(await page.getByLabel(CLIENT).inputValue()).toBe("Written second");
    await page.getByRole("link", { name: "Back: The visit" }).click();
    await page.getByRole("link", { name: /^Hand over/ }).click();
    const rows = await history(page);
    expect(rows.findIndex((row) => row.includes("Written second"))).toBeLessThan(
      rows.findIndex((row) => row.includes("Written first")),
    );
    // The earlier value can be put back, and the history keeps both.
    await page.getByRole("button", { name: /Put this back.*Written first/ }).click();
    await kept(page);
    await page.goBack();
    await page.getByRole("link", { name: /^Brief/ }).click();
    expect(await page.getByLabel(CLIENT).inputValue()).toBe("Written first");
    await context.close();
  });

  test("of two people come to the same by exchanging files, and what they wrote differently is shown to both", async () => {
    const [mine, theirs] = [await app.fresh(), await app.fresh()];
    const here = await newJob(app, mine);
    const job = jobOf(here);
    await write(here, CLIENT, "A. Example");
    const given = await saved(await handOver(mine, job), "Save a copy");

    const there = await app.at(theirs, "jobs");
    await there.locator('input[type=file][accept*="good-grounds-job"]').setInputFiles(given);
    await there.waitForURL(new RegExp(job));
    await app.at(theirs, "job", job, "brief");
    expect(await there.getByLabel(CLIENT).inputValue()).toBe("A. Example");

    await write(there, CLIENT, "A. Example and Sons");
    await write(there, ALTERATIONS, "Shed added");
    await app.at(mine, "job", job, "brief");
    await write(here, CLIENT, "Mr A. Example");
    await write(here, REASON, "before letting");
    const fromMe = await saved(await handOver(mine, job), "Save a copy");
    const fromThem = await saved(await handOver(theirs, job), "Save a copy");
    for (const [page, file] of [
      [here, fromThem],
      [there, fromMe],
    ] as const) {
      await join(page, file);
      await page.getByText(/^\d+ (entry|entries) taken in\.$/).waitFor();
      // A second time it changes nothing.
      await join(page, file);
      await page.getByText("Nothing in it was new.").waitFor();
      const choice = page.getByRole("group", { name: "Two answers stand here" });
      expect(await choice.textContent()).toContain("Mr A. Example");
      expect(await choice.textContent()).toContain("A. Example and Sons");
      expect(await faults(page)).toEqual([]);
    }
    const entries = async (page: Page) => entriesIn(await saved(page, "Save a copy"));
    expect(await entries(there)).toEqual(await entries(here));
    // Whoever sees both chooses, and the other hears of it by the next exchange.
    await here.getByRole("button", { name: /Keep this one.*and Sons/ }).click();
    await kept(here);
    await join(there, await saved(here, "Save a copy"));
    await there.getByText("1 entry taken in.").waitFor();
    expect(await there.getByRole("group", { name: "Two answers stand here" }).count()).toBe(0);
    await app.at(theirs, "job", job, "brief");
    expect(await there.getByLabel(CLIENT).inputValue()).toBe("A. Example and Sons");
    expect(await there.getByLabel(REASON).inputValue()).toBe("before letting");
    await Promise.all([mine.close(), theirs.close()]);
  });

  test("a copy that was altered, or of something else, is refused and changes nothing", async () => {
    const context = await app.fresh();
    const page = await newJob(app, context);
    const job = jobOf(page);
    await write(page, CLIENT, "A. Example");
    await handOver(context, job);
    const file = await saved(page, "Save a copy");
    const entries = entriesIn(file);
    // As an older version of the app wrote it, without a hash: whoever alters it has nothing to make fit.
    const altered = (change: (entry: CopiedEntry) => CopiedEntry, of = job) => ({
      name: "a.good-grounds-job",
      mimeType: "application/zip",
      buffer: Buffer.from(JSON.stringify({ job: of, entries: entries.map(change) })),
    });
    await join(
      page,
      altered((entry) => (entry.value === "A. Example" ? { ...entry, value: "B. Other" } : entry)),
    );
    // That nothing proves it is said before it is taken in; whoever leaves it has taken nothing in.
    await page.getByRole("alert").filter({ hasText: "It carries no proof" }).waitFor();
    expect(await faults(page)).toEqual([]);
    await page.getByRole("button", { name: "Leave it" }).click();
    await page.getByText("Nothing of it was taken in.").waitFor();
    await join(
      page,
      altered((entry) => (entry.value === "A. Example" ? { ...entry, value: "B. Other" } : entry)),
    );
    await page.getByRole("button", { name: "Take it in all the same" }).click();
    await page.getByText("altered outside the app").waitFor();
    await join(
      page,
      altered((entry) => (entry.value === "A. Example" ? { ...entry, seen: { other: 5 } } : entry)),
    );
    await page.getByText("not whole").waitFor();
    await join(
      page,
      altered((entry) => entry, "another"),
    );
    await page.getByText("copy of another job").waitFor();
    // One letter of a copy with a hash, put right in the archive's own checksum as well by packing it anew.
    const files = unzipSync(readFileSync(file));
    const text = strFromU8(files["record.json"] as Uint8Array).replace("A. Example", "B. Example");
    const buffer = Buffer.from(zipSync({ "record.json": strToU8(text) }));
    await join(page, { name: "a.good-grounds-job", mimeType: "application/zip", buffer });
    await page.getByText("damaged or altered on the way").waitFor();
    expect(entriesIn(await saved(page, "Save a copy"))).toEqual(entries);
    await context.close();
  });

  test("where the browser refuses any storage the app says so before anything is typed", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    const refused = 'throw new DOMException("not in this window", "SecurityError")';
    await filesWith(app, context, `StorageManager.prototype.getDirectory = async () => { ${refused}; };`);
    await context.addInitScript(() => {
      indexedDB.open = () => {
        throw new DOMException("not in this window", "SecurityError");
      };
    });
    const page = await context.newPage();
    await page.goto(app.address);
    await page.getByRole("alert").filter({ hasText: "This browser keeps nothing" }).waitFor();
    expect(await faults(page)).toEqual([]);
    await context.close();
  });
});
