/// <reference lib="dom" />
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, kept, PHONE } from "./app-in-browser.ts";

const JOB = ["job", "demonstration"];
const AT = "boards/cu/circuits/c5";

describe.runIf(needTool("chromium"))("readings by the keypad and by the keyboard", () => {
  let app: AppInBrowser;
  let context: BrowserContext;
  beforeAll(async () => {
    app = await appInBrowser("readings");
  });
  afterAll(() => app?.close());

  /** A circuit of the demonstration with what it is and none of its readings. */
  async function emptied(circuit: string): Promise<Page> {
    context = await app.fresh({ ...PHONE, serviceWorkers: "block" });
    await context.route("**/demonstration.json", async (route) => {
      const { boards, ...file } = (await (await route.fetch()).json()) as {
        boards: { circuits: { id: string; readings: object }[] }[];
      };
      for (const one of boards.flatMap(({ circuits }) => circuits)) if (one.id === circuit) one.readings = {};
      await route.fulfill({ json: { ...file, boards } });
    });
    return app.at(context, ...JOB, "readings", "cu", circuit);
  }

  const field = (page: Page, name: string) => page.locator(`[id="at:${AT}/readings/${name}"]`);
  const focused = (page: Page) => page.evaluate(() => document.activeElement?.id ?? "");
  const keys = async (page: Page, ...names: readonly string[]) => {
    for (const name of names) await page.locator(".keypad").getByRole("button", { name, exact: true }).tap();
  };

  test("takes a whole circuit by the keys, each verdict at once, and goes on by itself, dead before live", async () => {
    const page = await emptied("c5");
    await field(page, "r1r2").tap();
    // Live tests wait for continuity.
    expect(await field(page, "zs").count()).toBe(0);
    await keys(page, "1", "Point", "2", "9", "Next →");
    expect(await focused(page)).toBe(`at:${AT}/readings/insulationVoltage`);
    await page.getByRole("radio", { name: "500 V" }).tap();
    expect(await focused(page)).toBe(`at:${AT}/readings/insulationLiveLive`);
    // The end of the display by one key, and on.
    await keys(page, "More than 999 MΩ, the end of the display");
    expect(await focused(page)).toBe(`at:${AT}/readings/insulationLiveEarth`);
    await keys(page, "0", "Point", "4", "Next →");
    expect(await focused(page)).toBe(`at:${AT}/readings/polarity`);
    const insulation = page.locator(".reading", { has: field(page, "insulationLiveEarth") });
    await insulation.getByText("not met").waitFor();
    expect(await insulation.locator("svg[role=img]").count()).toBe(1);
    await page.getByRole("radio", { name: "correct", exact: true }).tap();
    expect(await focused(page)).toBe(`at:${AT}/readings/zs`);
    // A slip of the point is asked about and never refused. No figure is offered with the question but the one typed.
    await keys(page, "1", "4", "2", "Next →");
    const asked = page.getByRole("group", { name: "Is that right?" });
    expect(((await asked.textContent()) ?? "").match(/\d+(\.\d+)?/g)).toEqual(["142"]);
    expect(await asked.getByRole("button").allTextContents()).toEqual(["I measure again", "I mistyped", "Keep 142 Ω"]);
    // What was mistyped is in the field again, to be put right digit by digit.
    await asked.getByRole("button", { name: "I mistyped" }).tap();
    await page.locator(`[id="at:${AT}/readings/zs"]:focus`).waitFor();
    expect(await field(page, "zs").inputValue()).toBe("142");
    await keys(page, "Delete the last digit", "Delete the last digit", "Point", "4", "2", "Next →");
    const zs = page.locator(".reading", { has: field(page, "zs") });
    await zs.getByText("in hand").waitFor();
    expect(await field(page, "zs").inputValue()).toBe("1.42");
    expect(await focused(page)).toBe("after-readings");
    await kept(page);
    const taken = await page.evaluate(standing, `${AT}/readings/zs`);
    expect(taken).toMatchObject({ shown: "1.42 Ω", at: expect.stringMatching(/^\d{4}-\d\d-\d\dT.*[+-]\d\d:\d\d$/) });
    expect(await page.evaluate(standing, `${AT}/readings/insulationLiveLive`)).toMatchObject({ shown: ">999 MΩ" });
    await context.close();
  });

  test("live tests open only on a reading that proves the protective conductor, or on a reason given with knowledge of it", async () => {
    const page = await emptied("c5");
    const gate = page.locator(".live-gate");
    const enter = async (shown: string) => {
      await field(page, "r1r2").focus();
      await page.keyboard.press("ControlOrMeta+a");
      await page.keyboard.type(shown);
      await page.keyboard.press("Enter");
      await kept(page);
    };
    await gate.getByText("No reading yet proves").waitFor();
    // Through chance metal, beyond the range, through leads that touch: shut, and why.
    for (const [shown, why] of [
      ["45", "R1+R2 is 45 Ω, far more than the recorded length and sizes of the cable give"],
      [">1999", "R1+R2 is beyond the range of the display (>1999 Ω)"],
      ["0.00", "R1+R2 is 0.00 Ω, far less than the recorded length"],
    ] as const) {
      await enter(shown);
      await gate.getByText(why).waitFor();
      expect(await field(page, "zs").count()).toBe(0);
      expect(await field(page, "faultCurrent").count()).toBe(0);
    }
    expect(await faults(page)).toEqual([]);
    await enter("1.29");
    await field(page, "zs").waitFor();
    expect(await field(page, "faultCurrent").count()).toBe(1);
    // A reason opens them for the reading it was written for, and not for one that comes after.
    await enter(">1999");
    await gate.getByRole("button", { name: "Test live all the same" }).click();
    await gate.getByLabel("Reason, which goes into the record").fill("to find where it is broken");
    await gate.getByRole("button", { name: "Record the reason and test live" }).click();
    await field(page, "zs").waitFor();
    await enter("60");
    await gate.getByText("written before this reading was known: to find where it is broken").waitFor();
    expect(await field(page, "zs").count()).toBe(0);
    await context.close();
  });

  test("takes a circuit by the keyboard alone: comma, unit, OL, reason; and reopens on the field that was left", async () => {
    const page = await emptied("c5");
    await field(page, "r1r2").focus();
    await page.keyboard.type("1,29");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Space");
    await page.locator(`[id="at:${AT}/readings/insulationLiveLive"]:focus`).waitFor();
    await page.keyboard.type("OL");
    await page.keyboard.press("Enter");
    await page.keyboard.type("450k");
    await page.keyboard.press("Enter");
    await page.locator(`[id="at:${AT}/readings/polarity"]:focus`).waitFor();
    await field(page, "insulationLiveEarth").focus();
    await page.keyboard.type("nonsense");
    await page.keyboard.press("Enter");
    await page.getByRole("alert").getByText("A number is needed").waitFor();
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.type("450k");
    await page.keyboard.press("Enter");
    await kept(page);
    expect(await page.evaluate(standing, `${AT}/readings/r1r2`)).toMatchObject({ shown: "1.29 Ω" });
    expect(await page.evaluate(standing, `${AT}/readings/insulationLiveLive`)).toMatchObject({ shown: ">999 MΩ" });
    expect(await page.evaluate(standing, `${AT}/readings/insulationLiveEarth`)).toMatchObject({ shown: "450 kΩ" });
    // The phone kills the tab; it opens again on the exact field.
    await field(page, "zs").focus();
    await page.waitForFunction(isRemembered, `at:${AT}/readings/zs`);
    await page.close();
    const again = await context.newPage();
    await again.goto(app.address);
    await again.locator(`[id="at:${AT}/readings/zs"]:focus`).waitFor();
    const box = await again.locator(`[id="at:${AT}/readings/zs"]`).boundingBox();
    const pad = await again.locator(".keypad").boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(pad?.y ?? 0);
    // A reason instead of a value.
    await again.getByRole("button", { name: "No value…" }).tap();
    await again.getByRole("radio", { name: "Limited" }).tap();
    await again.getByLabel("Why", { exact: true }).fill("cannot be switched on today");
    await again.keyboard.press("Enter");
    await kept(again);
    expect(await again.evaluate(standing, `${AT}/readings/zs`)).toEqual({
      notTaken: "limited",
      reason: "cannot be switched on today",
    });
    await context.close();
  });

  test("takes a ring point by point, and asks about a reading ten times too large", async () => {
    const page = await emptied("c1");
    const ring = "boards/cu/circuits/c1/readings";
    const at = (name: string) => page.locator(`[id="at:${ring}/${name}"]`);
    await at("r1").tap();
    await page.keyboard.type("0.42");
    await page.keyboard.press("Enter");
    await page.keyboard.type("4.0");
    await page.keyboard.press("Enter");
    // Measured again: the field is empty, and the record keeps what was rejected, with its time.
    await page.getByRole("button", { name: "I measure again" }).tap();
    await page.locator(`[id="at:${ring}/rn"]:focus`).waitFor();
    expect(await at("rn").inputValue()).toBe("");
    await kept(page);
    expect(await page.evaluate(rejected)).toEqual([
      expect.objectContaining({
        of: `${ring}/rn`,
        at: expect.stringMatching(/^\d{4}-\d\d-\d\dT/),
        reading: expect.objectContaining({ shown: "4.0 Ω", at: expect.stringMatching(/^\d{4}-\d\d-\d\dT/) }),
      }),
    ]);
    await page.keyboard.type("0.40");
    await page.keyboard.press("Enter");
    await page.locator(`[id="at:${ring}/r2"]:focus`).waitFor();
    await page.keyboard.type("0.67");
    await page.keyboard.press("Enter");
    for (const value of ["0.20", "0.21", "0.20"]) {
      await page.keyboard.type(value);
      await page.keyboard.press("Enter");
    }
    expect(await page.locator("label", { hasText: /^L–N, point/ }).allTextContents()).toEqual([
      "L–N, point 1",
      "L–N, point 2",
      "L–N, point 3",
      "L–N, point 4",
    ]);
    // An empty point ends the round; the next takes its names from this one.
    await page.keyboard.press("Enter");
    await page.keyboard.type("0.27");
    await page.keyboard.press("Enter");
    expect(await page.locator("label", { hasText: /^L–cpc, point/ }).count()).toBe(2);
    await kept(page);
    await page.reload();
    await page.locator("label", { hasText: "L–N, point 3" }).waitFor();
    await app.at(context, ...JOB, "hand-over");
    await page.getByRole("button", { name: "History" }).click();
    await page.getByText(/rn: 4\.0 Ω of .* rejected, to be measured again/).waitFor();
    await context.close();
  });

  test.each(["light", "dark"] as const)(
    "has no fault that axe finds and fits a narrow screen, %s",
    async (colorScheme) => {
      context = await app.fresh({ ...PHONE, colorScheme });
      await app.at(context, ...JOB);
      for (const steps of SCREENS) {
        const page = await app.at(context, ...JOB, ...steps);
        await page.locator("main h2, main ol").first().waitFor();
        expect({ steps, faults: await faults(page) }).toEqual({ steps, faults: [] });
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect({ steps, over }).toEqual({ steps, over: 0 });
      }
      await context.close();
    },
  );
});

const SCREENS: readonly (readonly string[])[] = [
  ["supply"],
  ["supply", "readings"],
  ["installation"],
  ["installation", "cu"],
  ["installation", "cu", "c1"],
  ["readings"],
  ["readings", "cu"],
  ["readings", "cu", "c1"],
  ["pictures"],
];

/** Whether the disk has a field as the place where somebody was last. */
async function isRemembered(id: string): Promise<boolean> {
  const db = await new Promise<IDBDatabase>((done) => {
    const opening = indexedDB.open("good-grounds");
    opening.onsuccess = () => done(opening.result);
  });
  const place = await new Promise<{ field?: string } | undefined>((done) => {
    const asking = db.transaction("settings").objectStore("settings").get("place");
    asking.onsuccess = () => done(asking.result);
  });
  db.close();
  return place?.field === id;
}

/** The value that was written last at a place, from the disk. */
async function standing(path: string): Promise<unknown> {
  const db = await new Promise<IDBDatabase>((done) => {
    const opening = indexedDB.open("good-grounds");
    opening.onsuccess = () => done(opening.result);
  });
  const all = await new Promise<{ path: string; at: string; number: number; value: unknown }[]>((done) => {
    const asking = db.transaction("entries").objectStore("entries").getAll();
    asking.onsuccess = () => done(asking.result);
  });
  db.close();
  const [last] = all
    .filter((entry) => entry.path === path)
    .sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : b.number - a.number));
  return last?.value;
}

/** The readings that were rejected, from the disk. */
async function rejected(): Promise<readonly unknown[]> {
  const db = await new Promise<IDBDatabase>((done) => {
    const opening = indexedDB.open("good-grounds");
    opening.onsuccess = () => done(opening.result);
  });
  const all = await new Promise<{ path: string; value: unknown }[]>((done) => {
    const asking = db.transaction("entries").objectStore("entries").getAll();
    asking.onsuccess = () => done(asking.result);
  });
  db.close();
  return all.filter(({ path }) => path.startsWith("~rejected/")).map(({ value }) => value);
}
