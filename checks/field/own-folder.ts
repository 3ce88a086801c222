import { closeSync, ftruncateSync, openSync, readdirSync, readSync, rmSync, statSync, writeSync } from "node:fs";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { PHONE } from "./app-in-browser.ts";

/** Where a browser keeps what a site stores, below the folder that is its own. */
export const PLACES = {
  database: ["Default/IndexedDB", "Default/WebStorage"],
  files: ["Default/File System"],
} as const;

export type Place = keyof typeof PLACES;

/** A browser with a folder of its own, which stays when the browser is closed. */
export function inFolder(profile: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profile, {
    ...PHONE,
    locale: "en-GB",
    executablePath: "/usr/bin/chromium",
    timeout: 120_000,
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
}

/** Opens the browser of a folder, does something on one of its pages, and closes it. */
export async function visit<T>(profile: string, work: (page: Page) => Promise<T>): Promise<T> {
  const context = await inFolder(profile);
  try {
    return await work(context.pages()[0] ?? (await context.newPage()));
  } finally {
    await context.close();
  }
}

/** Every file that a browser keeps in one of its places. */
export function filesOf(profile: string, place: Place): readonly string[] {
  return PLACES[place].flatMap((folder) => {
    try {
      return readdirSync(join(profile, folder), { recursive: true })
        .map((name) => join(profile, folder, String(name)))
        .filter((name) => statSync(name).isFile());
    } catch {
      return [];
    }
  });
}

/** The logs that a database is in, those of a folder of files among them. */
export function logsOf(profile: string, place: Place): readonly string[] {
  return filesOf(profile, place).filter((name) => /\d\.log$/.test(name) && statSync(name).size > 0);
}

/** The records of jobs as the app keeps them in files. */
export function recordsOf(profile: string): readonly string[] {
  return filesOf(profile, "files").filter((name) => /\/\d\d\/\d+$/.test(name) && statSync(name).size > 0);
}

/** Takes bytes off the end, as a write that was cut short leaves a file. */
export function tear(file: string, bytes = 10): void {
  const opened = openSync(file, "r+");
  ftruncateSync(opened, Math.max(0, statSync(file).size - bytes));
  closeSync(opened);
}

/** Turns one bit over, at a part of the length. */
export function flip(file: string, part: number, bit = 3): void {
  const opened = openSync(file, "r+");
  const at = Math.floor(statSync(file).size * part);
  const byte = Buffer.alloc(1);
  readSync(opened, byte, 0, 1, at);
  byte[0] = (byte[0] ?? 0) ^ (1 << bit);
  writeSync(opened, byte, 0, 1, at);
  closeSync(opened);
}

/** Takes a place away whole. */
export function remove(profile: string, place: Place): void {
  for (const folder of PLACES[place]) rmSync(join(profile, folder), { recursive: true, force: true });
}
