/// <reference lib="dom" />
import { execFileSync } from "node:child_process";
import { cpSync, existsSync, readdirSync, rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { threadId } from "node:worker_threads";
import AxeBuilder from "@axe-core/playwright";
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { serve } from "../../scripts/lib/static-server.mjs";
import { WAIT_LIMIT } from "../patience.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** A phone as an inspector holds it: narrow, touched. */
export const PHONE: BrowserContextOptions = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

/** The field app, built for this test, served on this machine, in a real browser. */
export interface AppInBrowser {
  readonly folder: string;
  readonly browser: Browser;
  address: string;
  /** A browser that has never seen the app. */
  readonly fresh: (options?: BrowserContextOptions) => Promise<BrowserContext>;
  /** A page of it on a screen of the demonstration, all of it drawn; errors of the page fail the test that looks. */
  readonly at: (context: BrowserContext, ...steps: readonly string[]) => Promise<Page>;
  readonly stopServer: () => Promise<void>;
  /** Serves again, at the same address. */
  readonly startServer: () => Promise<void>;
  readonly close: () => Promise<void>;
}

export async function appInBrowser(name: string): Promise<AppInBrowser> {
  const folder = `${root}out/field/${name}-${process.pid}-${threadId}`;
  cpSync(build(), folder, { recursive: true });
  let server = await serve(folder);
  const port = Number(new URL(server.address).port);
  const browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    timeout: WAIT_LIMIT,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
  const app: AppInBrowser = {
    folder,
    browser,
    address: server.address,
    fresh: async (options = PHONE) => {
      const context = await browser.newContext({ locale: "en-GB", ...options });
      context.setDefaultTimeout(WAIT_LIMIT);
      return context;
    },
    at: async (context, ...steps) => {
      const page = context.pages()[0] ?? (await context.newPage());
      await page.goto(`${app.address}#/${steps.join("/")}`);
      await page.locator("main h1").waitFor();
      await page.locator("[aria-busy]").waitFor({ state: "detached" });
      return page;
    },
    stopServer: () => server.stop(),
    startServer: async () => {
      server = await serve(folder, { port });
    },
    close: async () => {
      await browser.close();
      await server.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
  return app;
}

let built: string | undefined;

/** The folder of one build of the app, made once for all tests of a run that a thread holds. */
function build(): string {
  if (built !== undefined) return built;
  sweep();
  const folder = `${root}out/field/built-${process.pid}-${threadId}`;
  execFileSync(process.execPath, [`${root}apps/field/build.mjs`, folder], { stdio: ["ignore", "ignore", "inherit"] });
  built = folder;
  return folder;
}

/** A thread that is ended cannot tidy up behind itself: builds of runs that are over go when the next one starts. */
function sweep(): void {
  const all = existsSync(`${root}out/field`) ? readdirSync(`${root}out/field`) : [];
  for (const name of all) {
    const run = /^built-(\d+)-/.exec(name)?.[1];
    if (run !== undefined && !isRunning(Number(run)))
      rmSync(`${root}out/field/${name}`, { recursive: true, force: true });
  }
}

function isRunning(run: number): boolean {
  try {
    return process.kill(run, 0);
  } catch {
    return false;
  }
}

/** A job with nothing in it, on its brief. */
export async function newJob(app: AppInBrowser, context: BrowserContext): Promise<Page> {
  const page = await app.at(context, "jobs");
  await page.getByRole("button", { name: "New job" }).click();
  await page.getByLabel("Why the inspection is wanted").waitFor();
  return page;
}

/** Everything shown is on the disk. */
export async function kept(page: Page): Promise<void> {
  await page.locator('[data-kept="true"]').waitFor();
}

/** What axe finds wrong with a page, in words. */
export async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`);
}
