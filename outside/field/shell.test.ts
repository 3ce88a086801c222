import { readFileSync, writeFileSync } from "node:fs";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, kept, newJob, PHONE } from "./app-in-browser.ts";
import { SHELL_SCREENS } from "./shell-screens.ts";

const DEMO = ["job", "demonstration"] as const;

describe.runIf(needTool("chromium"))("the field app", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("shell");
  });
  afterAll(() => app?.close());

  const firstVisit = async (context: BrowserContext): Promise<Page> => {
    const page = await context.newPage();
    await page.goto(app.address);
    await page.getByRole("heading", { level: 1, name: "The visit" }).waitFor();
    return page;
  };

  test("opens the demonstration on the first run, marked as such, and lets it be thrown away", async () => {
    const context = await app.fresh();
    const page = await firstVisit(context);
    expect(await page.locator(".invented").textContent()).toContain("invented");
    await page.getByRole("button", { name: "Throw the demonstration away" }).click();
    await page.getByRole("button", { name: "Delete it for good" }).click();
    await page.getByText("There is no job on this device.").waitFor();
    // Gone for good: the next start does not bring it back by itself.
    await page.reload();
    await page.getByText("There is no job on this device.").waitFor();
    await page.getByRole("button", { name: "Make the demonstration again" }).click();
    await page.getByRole("heading", { level: 1, name: "The visit" }).waitFor();
    await context.close();
  });

  test("works without a server after the first visit", async () => {
    const context = await app.fresh();
    const page = await firstVisit(context);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await app.stopServer();
    try {
      await page.reload();
      await page.getByRole("heading", { level: 1, name: "The visit" }).waitFor();
      // Screens that were never opened with a signal are there as well.
      for (const name of ["brief", "people", "extent", "cautions", "inspected"]) {
        await app.at(context, ...DEMO, name);
        expect(await page.getByText("Something went wrong").count()).toBe(0);
      }
      await page.getByRole("link", { name: "Boards" }).click();
      await page.getByRole("group", { name: /Board firmly fixed/ }).waitFor();
    } finally {
      await app.startServer();
    }
    await context.close();
  });

  test("comes back to the exact field, with what was typed", async () => {
    const context = await app.fresh();
    await newJob(app, context);
    const page = context.pages()[0] as Page;
    await page.getByLabel("Name of the client").fill("A. Example");
    await page.getByLabel("Alterations and additions").fill("Shed added about 2019");
    await kept(page);
    await page.close();
    const again = await context.newPage();
    await again.goto(app.address);
    await again.getByRole("heading", { level: 1, name: "Brief" }).waitFor();
    await expect.poll(() => again.evaluate(() => document.activeElement?.id)).toBe("at:brief/alterations");
    expect(await again.getByLabel("Alterations and additions").inputValue()).toBe("Shed added about 2019");
    expect(await again.getByLabel("Name of the client").inputValue()).toBe("A. Example");
    await context.close();
  });

  test("keeps the theme that was chosen, and follows the device otherwise", async () => {
    const context = await app.fresh({ ...PHONE, colorScheme: "dark" });
    const page = await firstVisit(context);
    const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const dim = await paper();
    await page.getByRole("button", { name: /Light as the device says\. Change/ }).click();
    const light = await paper();
    expect(light).not.toBe(dim);
    await page.reload();
    await page.getByRole("heading", { level: 1 }).waitFor();
    expect(await paper()).toBe(light);
    await page.getByRole("button", { name: /Light theme\. Change/ }).click();
    expect(await paper()).toBe(dim);
    await context.close();
  });

  test("takes brief and extent from the keyboard alone", async () => {
    const context = await app.fresh({ viewport: { width: 1280, height: 800 } });
    const page = await newJob(app, context);
    /** Tabs on until the focus is on something of this name. */
    const tabTo = async (name: RegExp) => {
      for (let i = 0; i < 80; i++) {
        await page.keyboard.press("Tab");
        const named = await page.evaluate(() => {
          const one = document.activeElement;
          const labels =
            one instanceof HTMLInputElement || one instanceof HTMLTextAreaElement || one instanceof HTMLSelectElement
              ? one.labels
              : null;
          return labels?.[0]?.textContent ?? one?.textContent ?? "";
        });
        if (name.test(named)) return;
      }
      throw new Error(`no way by the keyboard to ${name}`);
    };
    await tabTo(/^Address of the premises/);
    await page.keyboard.type("1 Example Road\nAnytown");
    await tabTo(/^Use$/);
    await page.keyboard.press("D");
    await tabTo(/^Lived in/);
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowRight");
    await tabTo(/^England/);
    await page.keyboard.press("Space");
    await tabTo(/^Name of the client/);
    await page.keyboard.type("A. Example");
    await tabTo(/^Why the inspection/);
    await page.keyboard.type("before letting");
    await tabTo(/^Next: People/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { level: 1, name: "People and instruments" }).waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
    await tabTo(/^Next: Extent/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { level: 1, name: "Extent and limitations" }).waitFor();
    await tabTo(/^What is inspected/);
    await page.keyboard.type("All circuits; one accessory in five.");
    await tabTo(/^Agreed with/);
    await page.keyboard.type("A. Example");
    await tabTo(/^Add a limitation/);
    await page.keyboard.press("Enter");
    await expect.poll(() => page.evaluate(() => document.activeElement?.id ?? "")).toMatch(/kind/);
    await page.keyboard.press("ArrowRight");
    await tabTo(/^What was not inspected/);
    await page.keyboard.type("Loft beyond the hatch");
    await tabTo(/^Why/);
    await page.keyboard.type("Boarded over");
    await kept(page);
    const job = new URL(page.url()).hash.split("/")[2] as string;
    await app.at(context, "job", job);
    const parts = await page.locator(".part").allInnerTexts();
    expect(parts.find((one) => one.startsWith("Brief"))).toContain("complete");
    expect(parts.find((one) => one.startsWith("Extent"))).toContain("agreed, 1 limitation");
    await context.close();
  });

  test("says on every screen and after a restart that the earthing conductor is off, until it is back", async () => {
    const context = await app.fresh();
    await firstVisit(context);
    const page = await app.at(context, ...DEMO, "cautions", "earthing");
    const disconnect = page.getByRole("button", { name: "The earthing conductor is disconnected now" });
    expect(await disconnect.isDisabled()).toBe(true);
    for (const step of await page.getByRole("button", { name: "Done" }).all()) await step.click();
    await disconnect.click();
    const banner = page.getByRole("alert").filter({ hasText: "Earthing conductor disconnected" });
    await banner.waitFor();
    await kept(page);
    for (const steps of SHELL_SCREENS) {
      await app.at(context, ...steps);
      await banner.waitFor();
    }
    await page.close();

    const again = await context.newPage();
    await again.goto(`${app.address}#/job/demonstration/brief`);
    const question = again.getByRole("dialog", { name: "The earthing conductor was left disconnected" });
    await question.waitFor();
    expect(await faults(again)).toEqual([]);
    // Escape is no answer, however often.
    await again.keyboard.press("Escape");
    await again.keyboard.press("Escape");
    await again.keyboard.press("Escape");
    await expect.poll(() => question.isVisible()).toBe(true);
    await again.getByRole("button", { name: "Record that it is back" }).click();
    await again.getByRole("button", { name: "It is connected again" }).click();
    await again.getByRole("button", { name: "Yes, connected and tight" }).click();
    await again.getByText(/back \d/).waitFor();
    expect(await again.getByText("Earthing conductor disconnected").count()).toBe(0);
    await kept(again);
    await app.at(context, "jobs");
    expect(await again.getByText("Earthing conductor disconnected").count()).toBe(0);
    await context.close();
  });

  test("starts from last time's file: the structure is there, the readings are not", async () => {
    const context = await app.fresh();
    await firstVisit(context);
    const page = await app.at(context, "jobs");
    await page.setInputFiles("input[type=file][accept*=json]", `${app.folder}/demonstration.json`);
    await page.getByRole("heading", { level: 1, name: "Brief" }).waitFor();
    expect(await page.getByLabel("Address of the premises").inputValue()).toContain("12 Example Terrace");
    expect(await page.getByLabel("Why the inspection is wanted").inputValue()).toBe("");
    const job = new URL(page.url()).hash.split("/")[2] as string;
    const paths = await page.evaluate(
      (id) =>
        new Promise<string[]>((done, failed) => {
          const opening = indexedDB.open("good-grounds");
          opening.onerror = () => failed(opening.error);
          opening.onsuccess = () => {
            const all = opening.result.transaction("entries").objectStore("entries").index("job").getAll(id);
            all.onsuccess = () => done(all.result.map(({ path }: { path: string }) => path));
          };
        }),
      job,
    );
    expect(paths.some((path) => /^boards\/[^/]+\/circuits\/[^/]+\/device$/.test(path))).toBe(true);
    expect(paths.filter((path) => path.includes("/readings"))).toEqual([]);
    expect(paths.filter((path) => path.startsWith("~earlier/"))).toEqual(["~earlier/GG-2026-0417"]);
    expect(paths.filter((path) => /^(observations|inspected|signatures|photographs|conclusion)\//.test(path))).toEqual(
      [],
    );
    await app.at(context, "jobs");
    await page.setInputFiles("input[type=file][accept*=json]", {
      name: "x.json",
      mimeType: "application/json",
      buffer: Buffer.from("{}"),
    });
    await page.getByRole("alert").filter({ hasText: "could not be used" }).waitFor();
    await context.close();
  });

  test("offers a newer version without losing what is being typed", async () => {
    const context = await app.fresh();
    const page = await newJob(app, context);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const worker = `${app.folder}/service-worker.js`;
    const before = readFileSync(worker, "utf8");
    try {
      writeFileSync(worker, before.replace(/good-grounds-/, "good-grounds-newer-"));
      await page.evaluate(() =>
        navigator.serviceWorker
          .getRegistration()
          .then((one) => one?.update())
          .then(() => undefined),
      );
      const offer = page.getByRole("button", { name: "Change over now" });
      await offer.waitFor();
      const field = page.getByLabel("Alterations and additions");
      await field.focus();
      await page.keyboard.type("typed to the last letter");
      await offer.evaluate((button: HTMLButtonElement) => button.click());
      await page.waitForEvent("load");
      await page.getByLabel("Alterations and additions").waitFor();
      await expect.poll(() => field.inputValue()).toBe("typed to the last letter");
    } finally {
      writeFileSync(worker, before);
    }
    await context.close();
  });

  test("answers items with large buttons; limited asks why, and nothing is answered beforehand", async () => {
    const context = await app.fresh();
    const page = await newJob(app, context);
    const job = new URL(page.url()).hash.split("/")[2] as string;
    await app.at(context, "job", job, "inspected", "intake");
    expect(await page.locator("input[type=radio]:checked").count()).toBe(0);
    const cutOut = page.getByRole("group", { name: /^Cut-out sound/ });
    await cutOut.getByRole("radio", { name: "In order" }).tap();
    await page.getByText("1 of 6 answered").waitFor();
    const meter = page.getByRole("group", { name: /^Meter position/ });
    await meter.getByRole("radio", { name: "Limited" }).tap();
    await page.getByText("1 of 6 answered").waitFor();
    await meter.getByLabel("Why").fill("locked cupboard");
    await page.getByText("2 of 6 answered").waitFor();
    await meter.getByRole("radio", { name: "In order" }).tap();
    await meter.getByRole("radio", { name: "Limited" }).tap();
    expect(await meter.getByLabel("Why").inputValue()).toBe("");
    await app.at(context, "job", job, "inspected", "bathrooms");
    await page.getByRole("button", { name: /^No room with a bath or shower/ }).click();
    await page.getByText("4 of 4 answered").waitFor();
    await context.close();
  });

  test("a screen that fails says what to do, and the rest goes on", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await firstVisit(context);
    await context.route(/pieces\/extent-/, (route) => route.abort());
    const page = await app.at(context, ...DEMO, "extent");
    await page.getByRole("alert").filter({ hasText: "Something went wrong on this screen" }).waitFor();
    await page.getByRole("link", { name: "Back: The visit" }).click();
    await page.getByRole("link", { name: /^Brief/ }).click();
    await page.getByLabel("Name of the client").waitFor();
    await context.close();
  });
});
