/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { placesOf } from "../../apps/field/src/record/document.ts";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, kept } from "./app-in-browser.ts";

const CIRCUITS = 40;
/** How much slower than this machine a phone is taken to be. */
const SLOWER = 4;
/** Milliseconds from a touch or key to the next picture. */
const LIMIT = 100;

/** The invented house with its circuits over and over until there are so many. */
function largeHouse(): { readonly [name: string]: never } {
  const file = JSON.parse(readFileSync(new URL("../../examples/terraced-house.json", import.meta.url), "utf8"));
  const [board] = file.boards;
  board.circuits = Array.from({ length: CIRCUITS }, (_, i) => ({
    ...structuredClone(board.circuits[i % board.circuits.length]),
    id: `n${i + 1}`,
    designation: String(i + 1),
  }));
  return { ...file, observations: [], inspected: [] };
}

describe.runIf(needTool("chromium"))(`a job of ${CIRCUITS} circuits`, () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("quick");
  });
  afterAll(() => app?.close());

  test(`answers every touch and key within ${LIMIT} ms, ${SLOWER} times slower`, async () => {
    const context = await app.fresh();
    const page = await app.at(context, "job", "demonstration");
    await page.evaluate(seed, placesOf(largeHouse()) as [string, unknown][]);
    const session = await context.newCDPSession(page);
    const at = async (...steps: readonly string[]) => {
      await app.at(context, "job", "large", ...steps);
      await page.waitForTimeout(1500);
      await page.evaluate(watch);
    };
    const report: Record<string, number> = {};
    const note = async (what: string) => {
      // The observer hears of an event some time after it.
      await page.waitForTimeout(700);
      report[what] = await page.evaluate(() => Math.max(0, ...(globalThis as unknown as { seen: number[] }).seen));
    };

    await at("readings", "cu", "n5");
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    await page.locator('[id="at:boards/cu/circuits/n5/readings/r1r2"]').tap();
    await note("open a field");
    await tapKeys(page, ["1", "Point", "3", "1"]);
    await note("digits by the keys");
    await page.locator(".keypad").getByRole("button", { name: "Next →" }).tap();
    await kept(page);
    await note("enter a reading and go on");
    await page.locator('[id="at:boards/cu/circuits/n5/readings/zs"]').tap();
    await page.keyboard.type("1.44", { delay: 120 });
    await page.keyboard.press("Enter");
    await kept(page);
    await note("enter a reading by the keyboard");
    await page.waitForTimeout(1500);

    await session.send("Emulation.setCPUThrottlingRate", { rate: 1 });
    await at("installation");
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    await page.getByRole("button", { name: "More for 7 " }).tap();
    await note("open what can be done with a way");
    await page.getByRole("button", { name: "Move away from the main switch" }).tap();
    await kept(page);
    await note("move a way");
    await page.getByRole("button", { name: "Take out" }).tap();
    await page.getByRole("button", { name: "Put back" }).waitFor();
    await note("take a way out");
    await page.getByRole("button", { name: "Put back" }).tap();
    await kept(page);
    await note("put it back");
    await session.send("Emulation.setCPUThrottlingRate", { rate: 1 });

    process.stderr.write(
      `interaction to next paint, ${CIRCUITS} circuits, ${SLOWER} times slower, in ms: ${JSON.stringify(report)}\n`,
    );
    const slow = Object.entries(report).filter(([, ms]) => ms > LIMIT);
    expect(slow).toEqual([]);
    await context.close();
  });
});

async function tapKeys(page: Page, names: readonly string[]): Promise<void> {
  for (const name of names) {
    await page.locator(".keypad").getByRole("button", { name, exact: true }).tap();
    await page.waitForTimeout(60);
  }
}

/** Collects how long touches and keys took until something new was painted. */
function watch(): void {
  const seen: number[] = [];
  Object.assign(globalThis, { seen });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEventTiming & { interactionId?: number })[])
      if ((entry.interactionId ?? 0) > 0) seen.push(entry.duration);
  }).observe({ type: "event", durationThreshold: 16 } as PerformanceObserverInit);
}

/** Writes a job straight to the disk. */
async function seed(places: readonly (readonly [string, unknown])[]): Promise<void> {
  const db = await new Promise<IDBDatabase>((done) => {
    const opening = indexedDB.open("good-grounds");
    opening.onsuccess = () => done(opening.result);
  });
  const change = db.transaction(["entries", "jobs"], "readwrite");
  const at = "2026-10-06T08:00:00.000Z";
  for (const [i, [path, value]] of places.entries()) {
    const number = i + 1;
    change
      .objectStore("entries")
      .put({ job: "large", id: `seed:${number}`, author: "seed", number, seen: { seed: i }, at, by: "", path, value });
  }
  change.objectStore("jobs").put({ id: "large", title: "Large", changed: at, invented: true });
  await new Promise((done) => {
    change.oncomplete = done;
  });
  db.close();
}
