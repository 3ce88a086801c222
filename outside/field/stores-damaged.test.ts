/// <reference lib="dom" />
import { mkdirSync, rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Entry } from "../../apps/field/src/record/entry.ts";
import { serve } from "../../scripts/lib/static-server.mjs";
import { needTool } from "../tools.ts";
import { fullDiskTest } from "./full-disk.ts";
import { databaseOf, flip, inFolder, jobFileOf, listOf, logsIn, removeFolder, tear } from "./own-folder.ts";
import { buildStorePage, type StoreWindow } from "./store-page.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const COUNT = 40;

/** What a page finds in the stores. */
interface Seen {
  readonly values: readonly string[];
  readonly titles: readonly string[];
  readonly found: ReturnType<StoreWindow["store"]["stores"]>["found"] | null;
  readonly states: readonly unknown[];
  /** Buckets of storage beside what every site has. */
  readonly buckets: readonly string[];
}

/** What happens to the stores of one site while the browser is closed. */
interface Damage {
  /** The folder of the browser's database of the site. */
  readonly database: string;
  /** The file of its job, undefined where there is none, and the browser's own list of the site's files. */
  readonly file: string | undefined;
  readonly list: string;
}

/** A site with the stores of its own: all are damaged between the same few starts of one browser. */
interface Site {
  readonly name: string;
  readonly first: (damage: Damage) => void;
  readonly second?: (damage: Damage) => void;
}

const inFile = (damage: Damage) => damage.file ?? "no file of the job";

const SITES: readonly Site[] = [
  { name: "torn-database", first: ({ database }) => logsIn(database).forEach((log) => void tear(log)) },
  { name: "torn-file", first: (damage) => tear(inFile(damage)), second: ({ database }) => removeFolder(database) },
  { name: "torn-list", first: ({ list }) => logsIn(list).forEach((log) => void tear(log)) },
  {
    name: "flipped-early",
    first: ({ database }) => logsIn(database).forEach((log) => void flip(log, 0.2)),
    second: (damage) => flip(inFile(damage), 0.2),
  },
  {
    name: "flipped-late",
    first: (damage) => flip(inFile(damage), 0.9),
    second: ({ database }) => logsIn(database).forEach((log) => void flip(log, 0.9)),
  },
  {
    name: "gone",
    first: ({ database }) => removeFolder(database),
    second: (damage) => removeFolder(inFile(damage)),
  },
  {
    name: "both",
    first: (damage) => {
      removeFolder(damage.database);
      flip(inFile(damage), 0.5);
    },
  },
  { name: "stopped-database", first: () => undefined, second: (damage) => removeFolder(inFile(damage)) },
  { name: "stopped-file", first: () => undefined, second: ({ database }) => removeFolder(database) },
  { name: "former", first: () => undefined },
];

describe.runIf(needTool("chromium"))("the two stores of a device", () => {
  const folder = `${root}out/field/damaged-${process.pid}`;
  const profile = `${folder}/profile`;
  /** What every start saw of every site, by its name. */
  const seen = new Map<string, readonly Seen[]>();
  /** The entries of jobs that were thrown away, as JSON, by where it was stopped. */
  const copies = new Map<string, string>();
  let former: readonly string[] = [];

  const valuesOf = (name: string) => Array.from({ length: COUNT }, (_, i) => `${name}: what was seen at place ${i}`);

  beforeAll(async () => {
    await buildStorePage(`${folder}/site`);
    mkdirSync(profile, { recursive: true });
    const server = await serve(`${folder}/site`);
    const { port } = new URL(server.address);
    const addressOf = (name: string) => `http://${name}.localhost:${port}/`;
    const started = async (work: (at: (name: string, file?: string) => Promise<Page>) => Promise<void>) => {
      const context: BrowserContext = await inFolder(profile);
      const page = await context.newPage();
      try {
        await work(async (name, file = "") => {
          await page.goto(`${addressOf(name)}${file}`);
          return page;
        });
      } finally {
        await context.close();
      }
    };
    const lookAtAll = () =>
      started(async (at) => {
        for (const { name } of SITES)
          seen.set(name, [...(seen.get(name) ?? []), await (await at(name)).evaluate(look)]);
      });
    const damage = (which: "first" | "second") => {
      for (const site of SITES) {
        const file = jobFileOf(profile, `${site.name}: what`);
        site[which]?.({
          database: databaseOf(profile, `${site.name}.localhost`),
          file,
          list: file === undefined ? "" : listOf(file),
        });
      }
    };
    try {
      await started(async (at) => {
        for (const { name } of SITES)
          if (name === "former") former = await (await at(name, "job-files.js")).evaluate(makeFormer, valuesOf(name));
          else await (await at(name)).evaluate(writeJob, valuesOf(name));
      });
      // A start after which nothing was wrong.
      await started(async (at) => {
        for (const { name } of SITES) if (name !== "former") await (await at(name)).evaluate(look);
        for (const where of ["database", "file"])
          copies.set(where, await (await at(`stopped-${where}`)).evaluate(discardAndStop, where));
      });
      damage("first");
      await lookAtAll();
      await lookAtAll();
      await started(async (at) => {
        for (const where of ["database", "file"])
          await (await at(`stopped-${where}`)).evaluate(takeIn, copies.get(where) ?? "");
      });
      damage("second");
      await lookAtAll();
      await lookAtAll();
    } finally {
      await server.stop();
    }
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }));

  /** The four starts of a site: two after each damage, so that what one start did must hold at the next. */
  const startsOf = (name: string): readonly [Seen, Seen, Seen, Seen] => {
    const [a, b, c, d] = seen.get(name) ?? [];
    if (a === undefined || b === undefined || c === undefined || d === undefined)
      throw new Error(`${name} was not looked at four times`);
    return [a, b, c, d];
  };
  const expectAll = (name: string, from = name) => {
    const values = valuesOf(from).sort();
    for (const one of startsOf(name))
      expect(one).toMatchObject({ values, titles: ["House by the mill"], states: ["works", "works"] });
  };

  test("a database torn at its end: nothing is lost, and it is told", () => {
    expectAll("torn-database");
    const [, , , last] = startsOf("torn-database");
    expect(last.found).toMatchObject({ fromFiles: expect.any(Number), fromDatabase: 0, damagedBytes: 0, nowhere: 0 });
    expect(last.found?.fromFiles).toBeGreaterThan(0);
  });

  test("a file torn at its end: it is told once, and the file is whole again without the database", () => {
    expectAll("torn-file");
    const [first, second, third] = startsOf("torn-file");
    expect(first.found).toMatchObject({ fromFiles: 0, fromDatabase: 1, nowhere: 0 });
    expect(first.found?.damagedBytes).toBeGreaterThan(0);
    // Nobody has read it yet, so it is still to be told; it is not counted twice.
    expect(second.found).toEqual(first.found);
    expect(third.found).toMatchObject({ fromFiles: COUNT + 1, nowhere: 0 });
  });

  test("the browser's own list of files torn at its end: nothing is lost", () => expectAll("torn-list"));

  test("a bit turned over in either store: nothing is lost or altered, and it is told", () => {
    expectAll("flipped-early");
    expectAll("flipped-late");
    expect(startsOf("flipped-early")[2].found?.damagedBytes).toBeGreaterThan(0);
    expect(startsOf("flipped-late")[0].found).toMatchObject({ fromDatabase: 1, nowhere: 0 });
  });

  test("a store that is gone is filled again from the other, whichever it is", () => {
    expectAll("gone");
    const [first, , third, last] = startsOf("gone");
    expect(first.found).toMatchObject({ fromFiles: COUNT + 1, fromDatabase: 0, nowhere: 0 });
    expect(third.found).toMatchObject({ fromFiles: COUNT + 1, fromDatabase: COUNT + 1, nowhere: 0 });
    expect(last.found).toEqual(third.found);
  });

  test("both damaged: only what both lost is missing, and it is told", () => {
    for (const one of startsOf("both")) expect(one.values).toHaveLength(COUNT - 1);
    const [first] = startsOf("both");
    expect(first.found).toMatchObject({ fromFiles: COUNT, nowhere: 1 });
    expect(first.found?.damagedBytes).toBeGreaterThan(0);
  });

  test.each(["database", "file"])(
    "thrown away, stopped before the %s heard of it: it stays away, and may come back",
    (where) => {
      const [first, second, third, last] = startsOf(`stopped-${where}`);
      for (const one of [first, second]) expect(one).toMatchObject({ values: [], titles: [], found: null });
      // Both hold the copy that was taken in: what was thrown away once hides nothing in a store that has to be filled again.
      expect(JSON.parse(copies.get(where) ?? "[]")).toHaveLength(COUNT + 1);
      for (const one of [third, last])
        expect(one).toMatchObject({ values: valuesOf(`stopped-${where}`).sort(), titles: ["House by the mill"] });
    },
  );

  test("what an earlier version kept in its second store is taken over, and that store is retired", () => {
    expect(former).toEqual(["second"]);
    expectAll("former");
    for (const one of startsOf("former")) expect(one).toMatchObject({ found: null, buckets: [] });
  });

  test("a disk that is full: nothing that was shown as kept is lost", async () => {
    const found = await fullDiskTest(1);
    if (found === undefined) {
      console.warn("a small file system cannot be mounted here: the full disk was not tried");
      return;
    }
    expect(found).toMatchObject({ times: 1, lost: 0, damaged: 0 });
    expect(found.kept).toBeGreaterThan(30);
    // It was full indeed.
    expect(found.refused).toBeGreaterThan(0);
  });
});

/** In the page: a job with a name and one entry after the other. */
async function writeJob(values: readonly string[]): Promise<void> {
  const { Session, storesChecked } = (window as unknown as StoreWindow).store;
  await storesChecked();
  const session = await Session.open("job-1");
  await session.write(["title", "House by the mill"]);
  for (const [i, value] of values.entries()) await session.write([`observations/o${i}/what`, value]);
  session.close();
}

/** In the page: everything that the stores give. */
async function look(): Promise<Seen> {
  const { entriesOf, jobs, storesChecked, stores } = (window as unknown as StoreWindow).store;
  const titles = (await jobs()).map(({ title }) => title);
  await storesChecked();
  const entries = await entriesOf("job-1");
  const { database, files, found } = stores();
  return {
    values: entries
      .filter(({ path }) => path !== "title")
      .map(({ value }) => String(value))
      .sort(),
    titles: entries.length === 0 ? (await jobs()).map(({ title }) => title) : titles,
    found: found ?? null,
    states: [database, files],
    buckets: (await (navigator as unknown as { storageBuckets?: Buckets }).storageBuckets?.keys()) ?? [],
  };
}

/** In the page: throws the job away, and one of the stores never hears of it. The entries of before are the copy. */
async function discardAndStop(where: string): Promise<string> {
  const { discard, entriesOf } = (window as unknown as StoreWindow).store;
  const copy = JSON.stringify(await entriesOf("job-1"));
  const reached = new Promise<void>((done) => {
    if (where === "the database") {
      const { transaction } = IDBDatabase.prototype;
      IDBDatabase.prototype.transaction = function (names, mode, options) {
        if (mode !== "readwrite" || typeof names === "string" || [...names].length < 3)
          return transaction.call(this, names, mode, options);
        done();
        // Begun and never ended, as when the browser is stopped here.
        return transaction.call(this, "settings", "readonly");
      };
    } else {
      const { postMessage } = Worker.prototype;
      Worker.prototype.postMessage = function (this: Worker, message: { asked: { ask: string } }) {
        if (message.asked.ask === "remove") done();
        else postMessage.call(this, message);
      };
    }
  });
  discard("job-1").catch(() => undefined);
  await reached;
  return copy;
}

async function takeIn(copy: string): Promise<void> {
  const session = await (window as unknown as StoreWindow).store.Session.open("job-1");
  await session.join(JSON.parse(copy) as readonly Entry[]);
  session.close();
}

interface Buckets {
  readonly open: (name: string, options: object) => Promise<{ readonly indexedDB: IDBFactory }>;
  readonly keys: () => Promise<readonly string[]>;
}

/** In a page without the app: the second store as versions before the files of jobs made it, and no first. */
async function makeFormer(values: readonly string[]): Promise<readonly string[]> {
  const all = (navigator as unknown as { readonly storageBuckets: Buckets }).storageBuckets;
  const { indexedDB } = await all.open("second", { durability: "strict" });
  await new Promise<void>((done, failed) => {
    const request = indexedDB.open("good-grounds", 1);
    request.onupgradeneeded = () => {
      const db = request.result;
      db.createObjectStore("entries", { keyPath: ["job", "id"] }).createIndex("job", "job");
      db.createObjectStore("jobs", { keyPath: "id" });
      db.createObjectStore("settings");
    };
    request.onerror = () => failed(request.error);
    request.onsuccess = () => {
      const change = request.result.transaction("entries", "readwrite");
      const places = [["title", "House by the mill"], ...values.map((value, i) => [`observations/o${i}/what`, value])];
      for (const [i, [path, value]] of places.entries())
        change.objectStore("entries").put({
          job: "job-1",
          id: `a:${i + 1}`,
          author: "a",
          number: i + 1,
          seen: i === 0 ? {} : { a: i },
          at: "2026-11-01T10:00:00.000Z",
          by: "",
          path,
          value,
        });
      change.onerror = () => failed(change.error);
      change.oncomplete = () => {
        request.result.close();
        done();
      };
    };
  });
  return all.keys();
}
