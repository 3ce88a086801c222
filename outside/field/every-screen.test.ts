import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, PHONE } from "./app-in-browser.ts";
import { jobScreens } from "./job-screens.ts";
import { smallTargets } from "./targets.ts";
import { lostAtThisSize } from "./zoomed.ts";

const DEMO = ["job", "demonstration"];

describe.runIf(needTool("chromium"))("every screen of a job", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("every-screen");
  });
  afterAll(() => app?.close());

  test.each(["light", "dark"] as const)("has no fault that axe finds, and fits the phone, %s", async (colorScheme) => {
    const context = await app.fresh({ ...PHONE, colorScheme });
    const screens = await jobScreens(await app.at(context, ...DEMO));
    expect(screens.length).toBeGreaterThan(22);
    for (const steps of screens) {
      const page = await app.at(context, ...DEMO, ...steps);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect({ steps, over, faults: await faults(page) }).toEqual({ steps, over: 0, faults: [] });
      expect({ steps, trouble: await page.getByText("Something went wrong").count() }).toEqual({ steps, trouble: 0 });
      expect({ steps, small: await page.evaluate(smallTargets) }).toEqual({ steps, small: [] });
    }
    await context.close();
  });

  test("has no fault that axe finds where a list stands beside what is open", async () => {
    const context = await app.fresh({ viewport: { width: 1280, height: 800 } });
    for (const steps of await jobScreens(await app.at(context, ...DEMO))) {
      const page = await app.at(context, ...DEMO, ...steps);
      expect({ steps, faults: await faults(page) }).toEqual({ steps, faults: [] });
    }
    await context.close();
  });

  test("loses nothing on a desk's screen of 1280 by 800 at 200 %", async () => {
    const context = await app.fresh({ viewport: { width: 640, height: 400 } });
    for (const steps of await jobScreens(await app.at(context, ...DEMO))) {
      const page = await app.at(context, ...DEMO, ...steps);
      const { covered, ...lost } = await page.evaluate(lostAtThisSize);
      expect({ steps, ...lost }).toEqual({ steps, over: 0, outside: [], cut: [] });
      expect({ steps, covered: Math.max(covered, 0.5) }).toEqual({ steps, covered: 0.5 });
    }
    await context.close();
  });
});
