/// <reference lib="dom" />
import { execFileSync } from "node:child_process";
import { closeSync, mkdirSync, openSync, rmSync, statSync, truncateSync, writeSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { serve } from "../../scripts/lib/static-server.mjs";
import { onSite, open } from "./kill.ts";
import { buildStorePage, type StoreWindow } from "./store-page.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Room that the browser fills itself, in bytes: some entries, as the two stores take them in turn. */
const LEFT = 64 * 1024;

/** A small file system on which a browser can fill the disk without harm. */
interface SmallDisk {
  readonly folder: string;
  /** Takes all the room but {@link LEFT}. */
  readonly fill: () => void;
  readonly free: () => void;
  readonly remove: () => void;
}

/** A file system of so many MB at a folder of its own; undefined where this process may not mount one. */
function smallDisk(folder: string, megabytes: number): SmallDisk | undefined {
  mkdirSync(folder, { recursive: true });
  try {
    execFileSync("mount", ["-t", "tmpfs", "-o", `size=${megabytes}m`, "tmpfs", folder], { stdio: "ignore" });
  } catch {
    rmSync(folder, { recursive: true, force: true });
    return undefined;
  }
  const ballast = `${folder}/ballast`;
  return {
    folder,
    fill: () => {
      const file = openSync(ballast, "a");
      const piece = Buffer.alloc(4096, 1);
      try {
        for (;;) writeSync(file, piece);
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== "ENOSPC") throw error;
      } finally {
        closeSync(file);
      }
      // What the browser takes itself, byte by byte, tears more than what it is refused at once.
      truncateSync(ballast, Math.max(0, statSync(ballast).size - LEFT));
    },
    free: () => rmSync(ballast, { force: true }),
    remove: () => {
      execFileSync("umount", [folder]);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** What was found after the disk was full and had room again, so many times. */
export interface FullDiskFound {
  readonly times: number;
  /** Entries of which the page was told that they are kept. */
  readonly kept: number;
  /** Of those, how many were told of while the disk ran full. */
  readonly keptAsItFilled: number;
  /** Times that the page was told at last that something is not kept. */
  readonly refused: number;
  readonly lost: number;
  readonly damaged: number;
}

/**
 * Writes, fills the disk meanwhile, writes on until an entry is refused, kills the browser, makes room, and starts it twice, as a
 * browser does that begins to append to what it left: then everything that was said to be kept is looked for. Undefined
 * where no file system can be mounted.
 */
export async function fullDiskTest(times: number, megabytes = 128): Promise<FullDiskFound | undefined> {
  const folder = `${root}out/field/full-${process.pid}`;
  const disk = smallDisk(`${folder}/disk`, megabytes);
  if (disk === undefined) return undefined;
  await buildStorePage(`${folder}/site`);
  const server = await serve(`${folder}/site`);
  let found: FullDiskFound = { times: 0, kept: 0, keptAsItFilled: 0, refused: 0, lost: 0, damaged: 0 };
  try {
    for (let time = 0; time < times; time++) {
      const profile = `${disk.folder}/profile-${time}`;
      const told = new Set<number>();
      const started = async <T>(work: (page: Page) => Promise<T>): Promise<T> => {
        const { browser, kill } = await open(profile);
        try {
          return await work(await onSite(browser, server.address));
        } finally {
          await kill();
        }
      };
      await started(async (page) => {
        for (const number of (await page.evaluate(write, { from: 0, count: 30 })).kept) told.add(number);
        const writing = page.evaluate(write, { from: 1000, count: 100_000 });
        disk.fill();
        const full = await writing;
        for (const number of full.kept) told.add(number);
        found = {
          ...found,
          keptAsItFilled: found.keptAsItFilled + full.kept.length,
          refused: found.refused + (full.refused > 0 ? 1 : 0),
        };
      });
      disk.free();
      await started(async (page) => {
        for (const number of (await page.evaluate(write, { from: 2000, count: 1 })).kept) told.add(number);
      });
      const { numbers, damaged } = await started((page) => page.evaluate(read));
      const there = new Set(numbers);
      found = {
        ...found,
        times: found.times + 1,
        kept: found.kept + told.size,
        lost: found.lost + [...told].filter((number) => !there.has(number)).length,
        damaged: found.damaged + damaged,
      };
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    }
    return found;
  } finally {
    await server.stop();
    disk.remove();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** In the page: writes entries one after the other until some are refused, and says which are kept. */
async function write({ from, count }: { from: number; count: number }) {
  const { Session } = (window as unknown as StoreWindow).store;
  const session = await Session.open("full");
  const kept: number[] = [];
  let refused = 0;
  for (let number = from; number < from + count && refused < 8; number++)
    await session.write([`observations/o${number}/what`, `${number} `.repeat(1 + ((number * 37) % 200))]).then(
      () => kept.push(number),
      () => {
        refused += 1;
      },
    );
  return { kept, refused };
}

/** In the page: the numbers of all entries that are as they were written, and how many are not. */
async function read() {
  const { Session } = (window as unknown as StoreWindow).store;
  const session = await Session.open("full");
  const numbers = session.record.entries().flatMap(({ path, value }) => {
    const number = Number(/o(\d+)/.exec(path)?.[1]);
    return value === `${number} `.repeat(1 + ((number * 37) % 200)) ? [number] : [];
  });
  return { numbers, damaged: session.record.size - numbers.length };
}
