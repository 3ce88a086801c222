/// <reference lib="dom" />
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, kept, newJob, PHONE } from "./app-in-browser.ts";
import { filesRefuse, filesWith, refuse } from "./refusing-stores.ts";

describe.runIf(needTool("chromium"))("what is kept", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("shell-keeping");
  });
  afterAll(() => app?.close());

  test("says what is not kept and why, tries again by itself, and loses nothing", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await filesRefuse(app, context);
    const page = await newJob(app, context);
    await kept(page);
    await page.evaluate(refuse, true);
    await page.getByLabel("Name of the client").fill("A. Example");
    await page.getByRole("alert").filter({ hasText: "not kept: no room left" }).waitFor();
    expect(await page.locator('[data-kept="true"]').count()).toBe(0);
    expect(await page.getByLabel("Name of the client").inputValue()).toBe("A. Example");
    await page.evaluate(refuse, false);
    await kept(page);
    await page.reload();
    await page.getByLabel("Name of the client").waitFor();
    expect(await page.getByLabel("Name of the client").inputValue()).toBe("A. Example");
    await context.close();
  });

  test("where only the database fails, what the files took is kept, and it is told plainly", async () => {
    const context = await app.fresh();
    const page = await newJob(app, context);
    await kept(page);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("broken", "UnknownError");
      };
    });
    await page.getByLabel("Name of the client").fill("A. Example");
    await page.getByRole("alert").filter({ hasText: "One of the two stores of this device does not work" }).waitFor();
    await kept(page);
    await page.getByText("kept in one store only").waitFor();
    expect(await faults(page)).toEqual([]);
    // At the next start the database has it from the file.
    await page.reload();
    await page.getByRole("alert").filter({ hasText: "The browser's database lacked" }).waitFor();
    expect(await page.getByLabel("Name of the client").inputValue()).toBe("A. Example");
    await page.getByRole("button", { name: "I have read this" }).click();
    await page.reload();
    await page.getByLabel("Name of the client").waitFor();
    expect(await page.getByText("The browser's database lacked").count()).toBe(0);
    await context.close();
  });

  test("where the disk refuses the files, nothing counts as kept, whatever the database says", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await filesRefuse(app, context);
    const page = await newJob(app, context);
    await kept(page);
    await page.evaluate(() => new BroadcastChannel("refuse").postMessage(true));
    await page.getByLabel("Name of the client").fill("A. Example");
    await page.getByRole("alert").filter({ hasText: "not kept: no room left" }).waitFor();
    await page.getByRole("alert").filter({ hasText: "One of the two stores of this device does not work" }).waitFor();
    await page.evaluate(() => new BroadcastChannel("refuse").postMessage(false));
    await kept(page);
    await context.close();
  });

  test("a browser without such files keeps in the one store it has, and the settings say so", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await filesWith(app, context, "delete FileSystemFileHandle.prototype.createSyncAccessHandle;");
    const page = await newJob(app, context);
    await page.getByLabel("Name of the client").fill("A. Example");
    await kept(page);
    expect(await page.getByText("does not work").count()).toBe(0);
    await page.reload();
    await page.getByLabel("Name of the client").waitFor();
    expect(await page.getByLabel("Name of the client").inputValue()).toBe("A. Example");
    await app.at(context, "settings");
    await page.getByText("This browser offers one store only").waitFor();
    await context.close();
  });

  test("warns before the room runs out, and says whether the browser promised to keep jobs", async () => {
    const context = await app.fresh();
    await context.addInitScript(() => {
      Object.defineProperty(navigator.storage, "estimate", { value: async () => ({ usage: 990e6, quota: 1000e6 }) });
      Object.defineProperty(navigator.storage, "persisted", { value: async () => false });
    });
    const page = await app.at(context, "job", "demonstration");
    await page.getByText("Only 10 MB of room left").waitFor();
    await app.at(context, "settings");
    await page.getByText("The browser has not promised to keep your jobs").waitFor();
    await page.getByText("990 MB used, 10 MB left").waitFor();
    await context.close();
  });

  test("two answers given without knowledge of each other stand side by side until somebody chooses", async () => {
    const context = await app.fresh();
    // Tabs that do not hear of each other are as good as two devices whose copies are joined later.
    await context.addInitScript(() => {
      BroadcastChannel.prototype.postMessage = () => undefined;
    });
    const one = await newJob(app, context);
    const other = await context.newPage();
    await other.goto(one.url());
    await other.getByLabel("Name of the client").fill("B. Other");
    await one.getByLabel("Name of the client").fill("A. One");
    await Promise.all([kept(one), kept(other)]);
    await one.reload();
    const choice = one.getByRole("group", { name: "Two answers stand here" });
    await choice.waitFor();
    expect(await one.getByLabel("Name of the client").inputValue()).toBe("");
    expect(await faults(one)).toEqual([]);
    await choice.getByRole("button", { name: /Keep this one.*B\. Other/ }).click();
    expect(await one.getByLabel("Name of the client").inputValue()).toBe("B. Other");
    await kept(one);
    await context.close();
  });

  test("the last change is taken back, step by step, and the button says when there is nothing more", async () => {
    const context = await app.fresh();
    const page = await newJob(app, context);
    const undo = page.getByRole("button", { name: "undo" });
    expect(await undo.isDisabled()).toBe(true);
    await page.getByRole("radio", { name: "England" }).check();
    await page.getByRole("radio", { name: "Let privately" }).check();
    await undo.click();
    expect(await page.getByRole("radio", { name: "Let privately" }).isChecked()).toBe(false);
    expect(await page.getByRole("radio", { name: "England" }).isChecked()).toBe(true);
    await page.getByRole("status").filter({ hasText: "Taken back: brief › tenure" }).waitFor();
    await undo.click();
    expect(await page.getByRole("radio", { name: "England" }).isChecked()).toBe(false);
    expect(await undo.isDisabled()).toBe(true);
    await context.close();
  });

  test("a job thrown away in one tab is gone from the other, and stays gone", async () => {
    const context = await app.fresh();
    const one = await newJob(app, context);
    const other = await context.newPage();
    await other.goto(`${app.address}#/jobs`);
    await other.getByRole("button", { name: "Delete Job of" }).click();
    await other.getByRole("button", { name: "Delete it for good" }).click();
    await one.getByRole("heading", { name: "This job was thrown away." }).waitFor();
    await one.reload();
    await one.getByRole("heading", { name: "This job is not on this device." }).waitFor();
    await context.close();
  });
});
