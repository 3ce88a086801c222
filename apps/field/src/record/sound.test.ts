import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Entry, Value } from "./entry.ts";
import { Record as JobRecord } from "./record.ts";
import { contradicts, isEntry, isWhole } from "./sound.ts";

const AT = "2026-11-01T10:00:00Z";

/** What two people's copies hold after they wrote, exchanged and wrote again. */
function lived(): { readonly mine: JobRecord; readonly theirs: JobRecord } {
  const [mine, theirs] = [new JobRecord(), new JobRecord()];
  const write = (record: JobRecord, who: string, path: string, value: Value) =>
    record.add(record.next(who, who, AT, path, value));
  write(mine, "a", "supply/readings/ze", "0.35 Ω");
  write(theirs, "b", "supply/readings/ze", "0.36 Ω");
  write(theirs, "b", "title", "House");
  for (const entry of theirs.entries()) mine.add(entry);
  write(mine, "a", "supply/readings/ze", "0.36 Ω");
  write(mine, "a", "title", "The house");
  return { mine, theirs };
}

const good: Entry = { id: "a:1", author: "a", number: 1, seen: {}, at: AT, by: "", path: "title", value: "House" };

describe("an entry that is read from a file", () => {
  test("is taken as the app writes it", () => {
    expect(isEntry(good)).toBe(true);
    expect(isEntry({ ...good, path: "boards/b/~order", value: 3 })).toBe(true);
  });

  const nested = (deep: number): Value => (deep === 0 ? 1 : [nested(deep - 1)]);
  test.each<readonly [string, object]>([
    ["an id of another entry", { id: "a:2" }],
    ["a number that is none", { number: 0, id: "a:0" }],
    ["a number beyond counting", { number: 1e300, id: "a:1e+300" }],
    ["an author of a name that objects have already", { author: "__proto__", id: "__proto__:1" }],
    ["knowledge of such an author", { seen: JSON.parse('{"__proto__": 1}') }],
    ["knowledge that is no count", { seen: { b: -1 } }],
    ["knowledge as a list", { seen: [1] }],
    ["a time that is none", { at: "yesterday" }],
    ["a person that is none", { by: "<b>" }],
    ["a place of nothing", { path: "" }],
    ["a place with nothing in between", { path: "boards//name" }],
    ["a place that reaches for the prototype", { path: "boards/__proto__/name" }],
    ["a place longer than any", { path: "a".repeat(401) }],
    ["a place deeper than any", { path: Array.from({ length: 17 }, () => "a").join("/") }],
    ["a place with control characters", { path: "a\u0000b" }],
    ["no value", { value: undefined }],
    ["a number that no file can hold", { value: Number.NaN }],
    ["a value nested without end", { value: nested(41) }],
    ["a value of more than any job holds", { value: "x".repeat(20_000_001) }],
  ])("is refused with %s", (_, change) => {
    expect(isEntry({ ...good, ...change })).toBe(false);
  });
});

describe("the entries of a copy", () => {
  test("are a whole after any exchange, in any order", () => {
    const { mine, theirs } = lived();
    expect(isWhole(theirs.entries())).toBe(true);
    expect(isWhole(mine.entries())).toBe(true);
    expect(isWhole([...mine.entries()].reverse())).toBe(true);
  });

  test("are none with any one of those left out that somebody knew of", () => {
    const { mine } = lived();
    const last = mine.entries().at(-1) as Entry;
    for (const left of mine.entries())
      if (left !== last) expect(isWhole(mine.entries().filter((entry) => entry !== left))).toBe(false);
  });

  test("are none where an entry claims to know what is not there, or more than it can", () => {
    const { mine } = lived();
    const last = mine.entries().at(-1) as Entry;
    const others = mine.entries().filter((entry) => entry !== last);
    const changed = (seen: Entry["seen"]) => isWhole([...others, { ...last, seen }]);
    expect(changed(last.seen)).toBe(true);
    // Would silently replace everything that author writes from now on.
    expect(changed({ ...last.seen, b: 1_000_000 })).toBe(false);
    expect(changed({ ...last.seen, a: last.number })).toBe(false);
    expect(changed({ a: last.number - 1 })).toBe(false);
    expect(changed({ ...last.seen, c: 1 })).toBe(false);
  });

  test("are none where two hold different content under one name", () => {
    expect(isWhole([good, good])).toBe(true);
    expect(isWhole([good, { ...good, value: "Another" }])).toBe(false);
  });

  test("contradict a record that holds something else under one of their names", () => {
    const record = new JobRecord([good]);
    expect(contradicts([good], record)).toBe(false);
    expect(contradicts([{ ...good, value: "Another" }], record)).toBe(true);
    expect(contradicts([{ ...good, path: "id" }], record)).toBe(true);
  });

  test("100,000 of them are looked at and taken in", () => {
    const record = new JobRecord();
    for (let i = 0; i < 100_000; i++)
      record.add(record.next(`tab-${i % 20}`, "p", AT, `boards/b/circuits/c${i % 400}/readings/${i % 9}`, i));
    const all: readonly Entry[] = JSON.parse(JSON.stringify(record.entries()));
    expect(all.every(isEntry) && isWhole(all)).toBe(true);
    expect(new JobRecord(all).size).toBe(100_000);
  });
});

test("the history never shows an entry before one its author knew of, whatever the clocks say", () => {
  const write = fc.record({ who: fc.nat({ max: 2 }), hour: fc.nat({ max: 23 }), from: fc.nat({ max: 2 }) });
  fc.assert(
    fc.property(fc.array(write, { maxLength: 25 }), (steps) => {
      const copies = [new JobRecord(), new JobRecord(), new JobRecord()] as const;
      for (const { who, hour, from } of steps) {
        const copy = copies[who] as JobRecord;
        if (from !== who) for (const entry of (copies[from] as JobRecord).entries()) copy.add(entry);
        copy.add(copy.next(`p${who}`, "", `2026-11-01T${String(hour).padStart(2, "0")}:00:00Z`, "title", hour));
      }
      const history = new JobRecord(copies.flatMap((copy) => copy.entries())).history();
      for (const [i, entry] of history.entries())
        for (const earlier of history.slice(i + 1))
          expect((entry.seen[earlier.author] ?? 0) < earlier.number).toBe(true);
    }),
  );
});
