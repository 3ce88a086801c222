/// <reference lib="dom" />
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, kept, PHONE } from "./app-in-browser.ts";
import { smallTargets } from "./targets.ts";

const DEMO = ["job", "demonstration"];

/** Every kind of thing by what it is called, with a word of one of its particulars. */
const KINDS = {
  place: "Dry or wet",
  "enclosure or barrier": "What gets in",
  "section of conductors": "Outermost layer",
  joint: "Joined by",
  "supplementary bond": "Connected",
  electrode: "Ground during the test",
  load: "Rated power",
  "surge protective device": "Indicator",
  "arc fault detection device": "Test button",
};

describe.runIf(needTool("chromium"))("things one by one", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("things");
  });
  afterAll(() => app?.close());

  async function add(page: Page, noun: string): Promise<void> {
    const choose = page.getByLabel("What to add");
    await choose.selectOption({ label: noun });
    await choose.locator("xpath=..").getByRole("button").tap();
    await page.getByRole("heading", { level: 2, name: new RegExp(`^${noun} \\d`) }).waitFor();
  }

  test("each kind is added at a board, filled, named and free of faults", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await app.at(context, ...DEMO);
    for (const [noun, particular] of Object.entries(KINDS)) {
      const page = await app.at(context, ...DEMO, "installation", "cu");
      await add(page, noun);
      await page.getByText(particular, { exact: true }).first().waitFor();
      expect({ noun, faults: await faults(page), small: await page.evaluate(smallTargets) }).toEqual({
        noun,
        faults: [],
        small: [],
      });
      expect(await page.getByLabel("Board", { exact: true }).inputValue()).toBe("cu");
    }
    const page = await app.at(context, ...DEMO, "things");
    expect(await page.locator("main .row-link").count()).toBe(Object.keys(KINDS).length + 1);
    expect({ faults: await faults(page), small: await page.evaluate(smallTargets) }).toEqual({ faults: [], small: [] });
    await context.close();
  });

  test("an observation brings one in, picks it, and it can be taken out and put back with the mention", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await app.at(context, ...DEMO);
    const page = await app.at(context, ...DEMO, "observations", "o1");
    await page.getByLabel("Something that is not listed").selectOption({ label: "enclosure or barrier" });
    await page.getByRole("button", { name: "Add an enclosure or barrier" }).tap();
    await page.getByLabel("Name", { exact: true }).fill("lid of the loft box");
    await page.getByRole("radio", { name: "by hand" }).check();
    await page.getByRole("button", { name: "Hinges carry: Not known" }).tap();
    await page.getByLabel("Limited").check();
    await page.getByRole("dialog").getByRole("textbox").fill("behind a wardrobe");
    await page.getByRole("button", { name: "Keep the reason" }).tap();
    await page.getByRole("button", { name: "Add an opening" }).tap();
    await page.getByLabel("Width", { exact: true }).fill("12");
    await page.getByRole("heading", { level: 2, name: "lid of the loft box" }).waitFor();
    await kept(page);
    const address = page.url();
    await app.at(context, ...DEMO, "observations", "o1");
    const ticked = page.getByRole("checkbox", { name: "lid of the loft box" });
    await ticked.waitFor();
    expect(await ticked.isChecked()).toBe(true);
    expect(await faults(page)).toEqual([]);
    await page.goto(address);
    await page.getByRole("button", { name: "Take out this enclosure or barrier" }).tap();
    await page.getByRole("button", { name: "Put back" }).tap();
    await page.getByRole("link", { name: "lid of the loft box" }).tap();
    expect(await page.getByLabel("Width", { exact: true }).inputValue()).toBe("12");
    await app.at(context, ...DEMO, "observations", "o1");
    expect(await ticked.isChecked()).toBe(true);
    await ticked.uncheck();
    expect(await ticked.isChecked()).toBe(false);
    await context.close();
  });

  test("the resistance of an electrode is read by the keypad", async () => {
    const context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await app.at(context, ...DEMO);
    const page = await app.at(context, ...DEMO, "supply");
    await add(page, "electrode");
    await page.getByRole("link", { name: "Readings of it" }).tap();
    await page.getByLabel(/^Resistance/).tap();
    for (const name of ["9", "1", "Next →"])
      await page.locator(".keypad").getByRole("button", { name, exact: true }).tap();
    expect(await page.getByLabel(/^Resistance/).inputValue()).toBe("91");
    expect({ faults: await faults(page), small: await page.evaluate(smallTargets) }).toEqual({ faults: [], small: [] });
    await context.close();
  });
});
