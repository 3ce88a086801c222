import { describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { killTest } from "./kill.ts";

describe.runIf(needTool("chromium"))("killed at random instants", () => {
  test("the browser still has every entry that it said it kept, and none is damaged", async () => {
    const { page, browser, files } = await killTest({ launches: 5, pagesEach: 2, seed: 20260901, emptied: true });
    expect(page).toMatchObject({ kills: 10, lost: 0, damaged: 0 });
    expect(browser).toMatchObject({ kills: 5, lost: 0, damaged: 0 });
    // And the files alone, each written through all of its kills, hold all of it.
    expect(files).toMatchObject({ kills: 15, lost: 0, damaged: 0 });
    // Nothing would be lost either where nothing was kept.
    expect(page.kept + browser.kept).toBeGreaterThan(50);
  });
});
