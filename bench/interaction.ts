/// <reference lib="dom" />
/** How soon the app answers touches and keys in a large job, on a processor as slow as that of a phone. */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { placesOf } from "../apps/field/src/record/document.ts";
import { appInBrowser, kept } from "../outside/field/app-in-browser.ts";
import type { Row } from "./measure.ts";

const CIRCUITS = 40;
/** How much slower than this machine a phone is taken to be. */
const SLOWER = 4;
/** Milliseconds from a touch or key to the next picture. */
const LIMIT = 100;

/** The invented house with its circuits over and over until there are so many. */
function largeHouse(): { readonly [name: string]: never } {
  const file = JSON.parse(readFileSync(new URL("../examples/terraced-house.json", import.meta.url), "utf8"));
  const [board] = file.boards;
  board.circuits = Array.from({ length: CIRCUITS }, (_, i) => ({
    ...structuredClone(board.circuits[i % board.circuits.length]),
    id: `n${i + 1}`,
    designation: String(i + 1),
  }));
  return { ...file, observations: [], inspected: [] };
}

type Act = () => Promise<void>;
type Report = Record<string, { readonly best: number; readonly worst: number }>;

/** Does the same several times. Other work on this machine only adds, so the best of them is what it takes. */
async function measureOn(page: Page, report: Report, what: string, acts: readonly Act[]): Promise<void> {
  const took: number[] = [];
  for (const act of acts) {
    await page.evaluate(() => (globalThis as unknown as { seen: number[] }).seen.splice(0));
    await act();
    // The observer hears of an event some time after it; the weighing that follows is no part of it.
    await page.waitForTimeout(500);
    took.push(await page.evaluate(() => Math.max(0, ...(globalThis as unknown as { seen: number[] }).seen)));
  }
  report[what] = { best: Math.min(...took), worst: Math.max(...took) };
}

function rowsOf(report: Report): readonly Row[] {
  return Object.entries(report).map(([what, { best, worst }]) => ({
    what: `${what}, ${CIRCUITS} circuits, ${SLOWER} times slower (slowest ${worst} ms)`,
    value: best,
    unit: "ms",
    target: LIMIT,
  }));
}

/** From a touch or key to the next picture, {@link SLOWER} times slower: the best of several of each kind. */
export async function benchInteraction(): Promise<readonly Row[]> {
  const app = await appInBrowser("interaction");
  try {
    const context = await app.fresh();
    const page = await app.at(context, "job", "demonstration");
    await page.evaluate(seed, placesOf(largeHouse()) as [string, unknown][]);
    const session = await context.newCDPSession(page);
    const slower = (rate: number) => session.send("Emulation.setCPUThrottlingRate", { rate });
    const at = async (...steps: readonly string[]) => {
      await slower(1);
      await app.at(context, "job", "large", ...steps);
      await page.locator(".verdict").first().waitFor();
      await page.evaluate(watch);
      await slower(SLOWER);
    };
    const report: Report = {};
    const measure = (what: string, ...acts: readonly Act[]) => measureOn(page, report, what, acts);
    const key = (name: string) => () => page.locator(".keypad").getByRole("button", { name, exact: true }).tap();
    const field = (name: string) => page.locator(`[id="at:boards/cu/circuits/n5/readings/${name}"]`);

    await at("readings", "cu", "n5");
    const open = (name: string) => () => field(name).tap();
    await measure("open a field", open("zs"), open("r1r2"), open("insulationLiveEarth"), open("r1r2"));
    await measure("a digit", key("1"), key("Point"), key("3"), key("1"));
    const enter = (name: string) => async () => {
      await field(name).fill("1.35");
      await page.evaluate(() => (globalThis as unknown as { seen: number[] }).seen.splice(0));
      await page.keyboard.press("Enter");
      await kept(page);
    };
    await measure("enter a reading and go on", enter("r1r2"), enter("insulationLiveLive"), enter("zs"));

    await at("installation");
    const button = (name: string) => () => page.getByRole("button", { name }).tap();
    await measure("open what can be done with a way", button("More for 7 "));
    const [up, down] = [button("Move towards the main switch"), button("Move away from the main switch")];
    await measure("move a way", down, down, up, down);
    await button("Close")();
    const [takeOut, putBack] = [button("Take out"), button("Put back")];
    await measure(
      "take a way out and put it back",
      ...[8, 9, 10].flatMap((way) => [
        async () => {
          await button(`More for ${way} `)();
          await takeOut();
        },
        putBack,
      ]),
    );
    await slower(1);

    await context.close();
    return rowsOf(report);
  } finally {
    await app.close();
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
