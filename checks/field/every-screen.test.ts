import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, PHONE } from "./app-in-browser.ts";

describe.runIf(needTool("chromium"))("every screen of a job", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("every-screen");
  }, 60_000);
  afterAll(() => app?.close());

  test.each(["light", "dark"] as const)("has no fault that axe finds, and fits the phone, %s", async (colorScheme) => {
    const context = await app.fresh({ ...PHONE, colorScheme });
    const visit = await app.at(context, "job", "demonstration");
    // The visit lists every screen there is.
    const links = await visit
      .locator('main a[href^="#/job/demonstration/"]')
      .evaluateAll((all) => all.map((link) => link.getAttribute("href")?.split("/")[3] ?? ""));
    const screens = [...new Set(links)];
    expect(screens.length).toBeGreaterThan(12);
    for (const id of screens) {
      const page = await app.at(context, "job", "demonstration", id);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect({ id, over, faults: await faults(page) }).toEqual({ id, over: 0, faults: [] });
      expect({ id, trouble: await page.getByText("Something went wrong").count() }).toEqual({ id, trouble: 0 });
    }
    await context.close();
  });
});
