import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, PHONE } from "./app-in-browser.ts";
import { SHELL_SCREENS } from "./shell-screens.ts";

describe.runIf(needTool("chromium"))("screens of the shell and of the start of the visit", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("shell-screens");
  });
  afterAll(() => app?.close());

  test.each(["light", "dark"] as const)("has no fault that axe finds on any screen, %s", async (colorScheme) => {
    const context = await app.fresh({ ...PHONE, colorScheme });
    await app.at(context, "job", "demonstration");
    for (const steps of SHELL_SCREENS) {
      const page = await app.at(context, ...steps);
      expect({ steps, faults: await faults(page) }).toEqual({ steps, faults: [] });
    }
    await context.close();
  });

  test("fits 360 points, and half of that at 200 %, without scrolling sideways; targets are large enough", async () => {
    for (const width of [360, 180]) {
      const context = await app.fresh({ ...PHONE, viewport: { width, height: 370 } });
      await app.at(context, "job", "demonstration");
      for (const steps of SHELL_SCREENS) {
        const page = await app.at(context, ...steps);
        const [over, small] = await page.evaluate(() => [
          document.documentElement.scrollWidth - document.documentElement.clientWidth,
          [...document.querySelectorAll("button, a, summary, select, input:not([type=checkbox]), textarea, .choice")]
            .filter((one) => one.checkVisibility() && !one.closest(".choice, .toggle, .skip") && !one.matches(".skip"))
            .map((one) => ({ words: one.textContent?.slice(0, 30), height: one.getBoundingClientRect().height }))
            .filter(({ height }) => height < 47.5),
        ]);
        expect({ width, steps, over, small }).toEqual({ width, steps, over: 0, small: [] });
      }
      await context.close();
    }
  });
});
