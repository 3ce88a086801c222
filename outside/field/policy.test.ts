import type { BrowserContext } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser } from "./app-in-browser.ts";
import { jobScreens } from "./job-screens.ts";

describe.runIf(needTool("chromium"))("the policy of the app", () => {
  let app: AppInBrowser;
  let context: BrowserContext;
  beforeAll(async () => {
    app = await appInBrowser("policy");
    context = await app.fresh();
  });
  afterAll(async () => {
    await app?.close();
  });

  test("is sent with the page, and nobody may show the app within a page of theirs", async () => {
    const policy = (await fetch(app.address)).headers.get("content-security-policy");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain("unsafe-inline");
    for (const name of ["", "app.js", "licences.txt"])
      expect((await fetch(app.address + name)).headers.get("referrer-policy"), name).toBe("no-referrer");
  });

  test("is broken by no screen", async () => {
    const page = await context.newPage();
    const broken: string[] = [];
    page.on("console", (message) => {
      if (message.text().includes("Content Security Policy")) broken.push(`${page.url()} ${message.text()}`);
    });
    // Something that does break it is heard of, or silence would say nothing.
    await app.at(context, "jobs");
    await page.evaluate("document.body.setAttribute('style', 'color: red')");
    await expect.poll(() => broken.length).toBeGreaterThan(0);
    await app.at(context, "settings");
    const heard = broken.length;
    for (const steps of await jobScreens(await app.at(context, "job", "demonstration")))
      await app.at(context, "job", "demonstration", ...steps);
    for (const steps of [["settings"], ["check"]]) await app.at(context, ...steps);
    expect(broken.slice(heard)).toEqual([]);
  });
});
