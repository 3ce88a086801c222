import {
  closeSync,
  existsSync,
  ftruncateSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { WAIT_LIMIT } from "../patience.ts";
import { PHONE } from "./app-in-browser.ts";

/** A browser with a folder of its own, which stays when the browser is closed. */
export function inFolder(profile: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profile, {
    ...PHONE,
    locale: "en-GB",
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

/** Every file below a folder; none where there is none. */
function filesIn(folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true })
    .map((name) => join(folder, String(name)))
    .filter((name) => statSync(name).isFile());
}

/** The logs of a database that is somewhere below a folder. */
export function logsIn(folder: string): readonly string[] {
  const logs = filesIn(folder).filter((name) => /\d\.log$/.test(name) && statSync(name).size > 0);
  if (logs.length === 0) throw new Error(`no log with anything in it below ${folder}`);
  return logs;
}

/** Below it are the databases of all sites. */
export function databasesOf(profile: string): string {
  return join(profile, "Default/IndexedDB");
}

/** The folder of the database of a site. */
export function databaseOf(profile: string, host: string): string {
  const all = databasesOf(profile);
  const name = readdirSync(all).find((one) => one.startsWith(`http_${host}_`) && one.endsWith(".leveldb"));
  return join(all, name ?? `no database of ${host}`);
}

/** The file that the browser keeps somewhere under a number and in which these words stand. */
export function jobFileOf(profile: string, words: string): string | undefined {
  return filesIn(join(profile, "Default/File System")).find(
    (name) => /\/\d\d\/\d+$/.test(name) && readFileSync(name).includes(words),
  );
}

/** The folder of the browser's own list of files to which a file belongs. */
export function listOf(file: string): string {
  return join(file, "../../Paths");
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

/** Takes a file or a folder away whole; it must be there. */
export function removeFolder(path: string): void {
  rmSync(path, { recursive: true });
}
