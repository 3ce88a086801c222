import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Entry } from "./entry.ts";
import { type JobLog, type Line, readLog, writtenOut } from "./job-log.ts";
import { Record as JobRecord } from "./record.ts";
import { areLastWords, missingAmong, unite } from "./union.ts";

const FIXED = { seed: 20261130, numRuns: 300 };
const AT = "2026-11-01T10:00:00Z";

/** So many entries by two people who see each other's work. */
function work(count: number): readonly Entry[] {
  const record = new JobRecord();
  for (let i = 0; i < count; i++)
    record.add(record.next(i % 3 === 0 ? "b" : "a", "", AT, `observations/o${i}/what`, `seen ${i}`));
  return record.entries();
}

const byId = (entries: readonly Entry[]) => new Map(entries.map((entry) => [entry.id, entry]));
const ids = (entries: readonly Entry[]) => entries.map(({ id }) => id).sort();
const logOf = (...lines: readonly Line[]): JobLog => readLog(writtenOut(lines));
const lines = (entries: readonly Entry[]): readonly Line[] => entries.map((entry) => ({ entry }));

describe("two stores taken together", () => {
  test("give everything that either holds, and say what each lacks, so that both are full after it", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.boolean(), fc.boolean(), fc.boolean()), { maxLength: 30 }), (places) => {
        const all = work(places.length);
        const held = (store: 0 | 1 | 2) => all.filter((_, i) => places[i]?.[store]);
        const { entries, databaseLacks, fileLacks, onlyOwn } = unite(held(0), byId(held(1)), held(2));
        expect(ids(entries)).toEqual(ids(all.filter((_, i) => places[i]?.some(Boolean))));
        expect(ids([...held(0), ...databaseLacks, ...onlyOwn])).toEqual(ids(entries));
        expect(ids([...held(1), ...fileLacks, ...onlyOwn])).toEqual(ids(entries));
      }),
      FIXED,
    );
  });

  test("of two entries under one id the one that was read under its checksum stands, and the other is mended", () => {
    const [entry] = work(1) as readonly [Entry];
    const other = { ...entry, value: "something else" };
    const { entries, databaseLacks, fileLacks } = unite([other], byId([entry]));
    expect(entries).toEqual([entry]);
    expect(databaseLacks).toEqual([entry]);
    expect(fileLacks).toEqual([]);
  });
});

describe("the file of a job", () => {
  test("gives what was added, and nothing of what was thrown away before", () => {
    const [one, two, three] = work(3) as readonly [Entry, Entry, Entry];
    const { entries, thrownAway } = logOf({ entry: one }, { entry: two }, { thrownAway: "d" }, { entry: three });
    expect([...entries.values()]).toEqual([three]);
    expect(thrownAway).toEqual(["d"]);
    // The same entry taken in again after that stands again.
    expect([...logOf({ entry: one }, { thrownAway: "d" }, { entry: one }).entries.values()]).toEqual([one]);
  });

  test("tells damage until it is noted, and new damage after that", () => {
    const [one, two] = work(2) as readonly [Entry, Entry];
    const torn = writtenOut([{ entry: one }]).subarray(0, -10);
    const more = (bytes: Uint8Array, next: readonly Line[]) => new Uint8Array([...bytes, ...writtenOut(next)]);
    const found = readLog(torn);
    expect(found).toMatchObject({ damagedBytes: torn.length, toldBytes: 0 });
    const noted = more(torn, [{ toldBytes: found.damagedBytes }, { entry: two }]);
    expect(readLog(noted)).toMatchObject({ damagedBytes: torn.length, toldBytes: torn.length });
    expect(readLog(noted.subarray(0, -10)).damagedBytes).toBeGreaterThan(torn.length);
  });
});

describe("what a file lacks", () => {
  const all = work(30);
  const byA = all.filter(({ author }) => author === "a");
  const last = byA.at(-1) as Entry;
  const before = all.filter((entry) => entry !== last && (entry.seen.a ?? 0) < last.number);

  test("may be what a closed tab was about to add, and is not told", () => {
    expect(areLastWords([last], logOf(...lines(before)))).toBe(true);
  });

  test("is a loss where anything shows that it was there, or where it is more than one tab has on the way", () => {
    const whole = logOf(...lines(before));
    expect(areLastWords([last], logOf())).toBe(false);
    expect(areLastWords([last], { ...whole, damagedBytes: 3 })).toBe(false);
    expect(areLastWords([byA[3] as Entry], logOf(...lines(all.filter((entry) => entry !== byA[3]))))).toBe(false);
    expect(areLastWords([last, all.find(({ author }) => author === "b") as Entry], whole)).toBe(false);
    const longer = work(60)
      .filter(({ author }) => author === "a")
      .slice(5, 26);
    expect(areLastWords(longer, logOf(...lines(work(3))))).toBe(false);
  });
});

describe("what neither store holds", () => {
  test("is counted by what others follow or knew of", () => {
    const all = work(20);
    expect(missingAmong(all)).toBe(0);
    expect(missingAmong(all.filter((_, i) => i !== 4 && i !== 9))).toBe(2);
    expect(missingAmong(all.slice(0, -1))).toBe(0);
  });
});
