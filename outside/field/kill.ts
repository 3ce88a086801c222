/// <reference lib="dom" />
import { type ChildProcess, spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";
import { serve } from "../../scripts/lib/static-server.mjs";
import { WAIT_LIMIT } from "../patience.ts";
import { buildStorePage, type StoreWindow } from "./store-page.ts";

/** What the page of the test has of the app, and of the test. */
interface KillWindow extends StoreWindow {
  readonly told: (number: number) => void;
  readonly begun: () => void;
}

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What was found after so many kills of one kind. */
export interface Found {
  readonly kills: number;
  /** Entries of which the page was told that they are kept. */
  readonly kept: number;
  /** Of those, how many were not there afterwards. */
  readonly lost: number;
  /** Entries that were there and not as they were written, or a record with holes. */
  readonly damaged: number;
  /** Entries that were there although nobody had been told so yet: no fault. */
  readonly untold: number;
}

/** What was killed; "files" is every job of both looked at again when the database is gone. */
export type Kill = "page" | "browser" | "files";

export interface KillPlan {
  readonly launches: number;
  /** Pages crashed before the browser is killed. */
  readonly pagesEach: number;
  readonly seed: number;
  /** Whether the browser's first database is gone at the last start. */
  readonly emptied?: boolean;
  readonly tell?: (words: string) => void;
}

/** No instant of a kill lies later after the first write than this, in milliseconds. */
const LATEST = 300;
/** Writers at work at once in one page, each waiting for its entry to be kept before it writes the next. */
const WRITERS = 4;

const NOTHING: Found = { kills: 0, kept: 0, lost: 0, damaged: 0, untold: 0 };

/** What was said to be kept, by job, and what of it was found after a kill. */
class Ledger {
  readonly found: Record<Kill, Found> = { page: NOTHING, browser: NOTHING, files: NOTHING };
  readonly #told = new Map<string, Set<number>>();
  readonly #random: () => number;
  #next = 0;

  constructor(random: () => number) {
    this.#random = random;
  }

  jobs(): Iterable<string> {
    return this.#told.keys();
  }

  /** Writes until the kill comes; what is told until then counts. */
  async writeUntil(page: Page, job: string, kill: () => Promise<void>): Promise<void> {
    const kept = new Set<number>();
    this.#told.set(job, kept);
    let begun: () => void = () => undefined;
    const first = new Promise<void>((done) => {
      begun = done;
    });
    await page.exposeFunction("told", (number: number) => void kept.add(number));
    await page.exposeFunction("begun", () => begun());
    const writing = page.evaluate(writeOn, { job, from: this.#next, writers: WRITERS });
    this.#next += 1_000_000;
    // It ends with the kill; before it has begun its end is a failure of the test itself.
    await Promise.race([first, writing]);
    writing.catch(() => undefined);
    await new Promise((done) => setTimeout(done, this.#random() * LATEST));
    await kill();
  }

  /** Looks for what was said to be kept of a job. */
  async look(page: Page, job: string, kind: Kill): Promise<void> {
    const { numbers, damaged } = await page.evaluate(lookAt, job);
    const there = new Set(numbers);
    const kept = this.#told.get(job) ?? new Set();
    const lost = [...kept].filter((number) => !there.has(number)).length;
    const before = this.found[kind];
    this.found[kind] = {
      kills: before.kills + 1,
      kept: before.kept + kept.size,
      lost: before.lost + lost,
      damaged: before.damaged + damaged,
      untold: before.untold + there.size - (kept.size - lost),
    };
  }
}

/**
 * Pages write through the app's own store without a pause while they, or the whole browser, are killed at random
 * instants; then the same folder of the browser is opened anew and everything that was said to be kept is looked for.
 */
export async function killTest({
  launches,
  pagesEach,
  seed,
  emptied = false,
  tell,
}: KillPlan): Promise<Record<Kill, Found>> {
  const folder = `${root}out/field/kill-${process.pid}`;
  const profile = `${folder}/profile`;
  await buildStorePage(`${folder}/site`);
  const server = await serve(`${folder}/site`);
  const ledger = new Ledger(randomFrom(seed));
  let opened: Opened | undefined;
  // Whoever stops this test must not leave a browser behind.
  const atEnd = () => opened?.killNow();
  process.on("exit", atEnd);

  try {
    for (let launch = 0; launch < launches; launch++) {
      opened = await open(profile);
      let page = await onSite(opened.browser, server.address);
      if (launch > 0) await ledger.look(page, `job-${launch - 1}-last`, "browser");
      for (let crash = 0; crash < pagesEach; crash++) {
        const job = `job-${launch}-${crash}`;
        const devtools = await page.context().newCDPSession(page);
        const crashed = page.waitForEvent("crash");
        await ledger.writeUntil(page, job, async () => {
          devtools.send("Page.crash").catch(() => undefined);
          await crashed;
        });
        await page.close();
        page = await onSite(opened.browser, server.address);
        await ledger.look(page, job, "page");
      }
      const { kill } = opened;
      await ledger.writeUntil(page, `job-${launch}-last`, kill);
      opened = undefined;
      if (launch % 10 === 9) tell?.(`${launch + 1} of ${launches}: ${JSON.stringify(ledger.found)}`);
    }
    // What the browser itself does at some starts after a kill: it takes its database for damaged and begins an empty one.
    if (emptied) rmSync(`${profile}/Default/IndexedDB`, { recursive: true });
    opened = await open(profile);
    const page = await onSite(opened.browser, server.address);
    await ledger.look(page, `job-${launches - 1}-last`, "browser");
    if (emptied) for (const job of ledger.jobs()) await ledger.look(page, job, "files");
    return ledger.found;
  } finally {
    await opened?.kill();
    process.off("exit", atEnd);
    await server.stop();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}

/** A browser that was started by its own command, with its folder. */
export interface Opened {
  readonly browser: Browser;
  /** Ends every process of the browser at once, without a word to any of them. */
  readonly kill: () => Promise<void>;
  readonly killNow: () => void;
}

export async function open(profile: string, tries = 4): Promise<Opened> {
  const child = spawn(
    "/usr/bin/chromium",
    [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--hide-crash-restore-bubble",
      `--user-data-dir=${profile}`,
      "--remote-debugging-port=0",
    ],
    // A group of its own, so that the kill reaches all of its processes and no other.
    { detached: true, stdio: ["ignore", "ignore", "pipe"] },
  );
  const gone = new Promise<void>((done) => child.once("exit", () => done()));
  const killNow = () => {
    if (child.pid !== undefined && child.exitCode === null && child.signalCode === null)
      process.kill(-child.pid, "SIGKILL");
  };
  const kill = async () => {
    killNow();
    await gone;
  };
  try {
    return {
      browser: await chromium.connectOverCDP(await devtoolsOf(child), { timeout: WAIT_LIMIT / 4 }),
      kill,
      killNow,
    };
  } catch (error) {
    await kill();
    // On a busy machine a browser may come up and not answer. One more kill does the test no harm.
    if (tries === 1) throw error;
    return open(profile, tries - 1);
  }
}

/** The address at which the browser can be spoken to, which it says when it is up. */
function devtoolsOf(child: ChildProcess): Promise<string> {
  return new Promise((done, failed) => {
    let said = "";
    const timer = setTimeout(() => failed(new Error(`the browser does not come up: ${said}`)), WAIT_LIMIT);
    child.stderr?.on("data", (bytes) => {
      said += String(bytes);
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (address === undefined) return;
      clearTimeout(timer);
      done(address);
    });
    child.once("error", failed);
  });
}

export async function onSite(browser: Browser, address: string): Promise<Page> {
  const [context] = browser.contexts();
  if (context === undefined) throw new Error("the browser has no window");
  const page = await context.newPage();
  await page.goto(address);
  return page;
}

/** In the page: writers that write one entry after the other as fast as they are kept. */
async function writeOn({ job, from, writers }: { job: string; from: number; writers: number }): Promise<void> {
  const { store, told, begun } = window as unknown as KillWindow;
  const session = await store.Session.open(job);
  let number = from;
  begun();
  const writer = async () => {
    for (;;) {
      const mine = number++;
      // From a word to some pages, so that a write takes more than a moment.
      const text = String(mine).repeat(1 + ((mine * 7919) % 400));
      await session.write([`observations/o${mine % 50}/what`, { mine, text, length: text.length }]);
      told(mine);
    }
  };
  await Promise.all(Array.from({ length: writers }, writer));
}

/** In the page: the numbers of all entries of a job that are as they were written, and how many are not. */
async function lookAt(job: string): Promise<{ readonly numbers: readonly number[]; readonly damaged: number }> {
  const { Session, isEntry, isWhole } = (window as unknown as StoreWindow).store;
  const session = await Session.open(job);
  const entries = session.record.entries();
  session.close();
  const numbers = entries.flatMap((entry) => {
    const { mine, text, length } = entry.value as { mine: number; text: string; length: number };
    const right = isEntry(entry) && text.length === length && text === String(mine).repeat(1 + ((mine * 7919) % 400));
    return right ? [mine] : [];
  });
  return { numbers, damaged: entries.length - numbers.length + (isWhole(entries) ? 0 : 1) };
}

/** Numbers from 0 to 1 that are the same at every run with the same seed. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
