import { mkdirSync, rmSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, kept } from "./app-in-browser.ts";
import { databasesOf, logsIn, tear, visit } from "./own-folder.ts";

describe.runIf(needTool("chromium"))("a store that is found short", () => {
  let app: AppInBrowser;
  let profile = "";
  beforeAll(async () => {
    app = await appInBrowser("stores");
  });
  afterAll(() => app?.close());
  beforeEach(() => {
    profile = `${app.folder}-profile`;
    mkdirSync(profile, { recursive: true });
  });
  afterEach(() => rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }));

  const onJobs = async (page: Page) => {
    await page.goto(`${app.address}#/jobs`);
    await page.getByRole("heading", { name: "Jobs" }).waitFor();
  };
  const toBrief = async (page: Page) => {
    await onJobs(page);
    await page.getByRole("link", { name: /Job of/ }).click();
    await page.getByRole("link", { name: /Brief/ }).first().click();
    await page.getByLabel("Name of the client").waitFor();
  };

  test("a database torn at its end loses nothing, at this start and the next", async () => {
    await visit(profile, async (page) => {
      await onJobs(page);
      await page.getByRole("button", { name: "New job" }).click();
      await page.getByLabel("Name of the client").fill("A. Example");
      await kept(page);
    });
    for (const log of logsIn(databasesOf(profile))) tear(log);
    await visit(profile, async (page) => {
      await toBrief(page);
      expect(await page.getByLabel("Name of the client").inputValue()).toBe("A. Example");
      await page.getByRole("radio", { name: "England" }).check();
      await kept(page);
    });
    await visit(profile, async (page) => {
      await onJobs(page);
      await page.getByRole("alert").filter({ hasText: "The browser's database lacked" }).waitFor();
      await toBrief(page);
      expect(await page.getByLabel("Name of the client").inputValue()).toBe("A. Example");
      expect(await page.getByRole("radio", { name: "England" }).isChecked()).toBe(true);
      await kept(page);
    });
  });
});
