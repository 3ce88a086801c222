import { readFileSync } from "node:fs";
import { parseInspection } from "@good-grounds/inspection";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { documentOf, membersOf, ORDER, placesOf, takenOutAndWritten } from "./document.ts";
import type { Entry, Value } from "./entry.ts";
import { equal, Record as JobRecord } from "./record.ts";

/** Something people do to their copies of one job: write at a place, or take in another's copy. */
type Step =
  | { readonly kind: "write"; readonly who: number; readonly path: string; readonly value: Value }
  | { readonly kind: "take-in"; readonly who: number; readonly from: number };

const PEOPLE = 3;
const PATHS = ["supply/readings/ze", "boards/b/circuits/c/readings/zs", "boards/b/circuits/c", "observations/o/what"];

const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      kind: fc.constant("write" as const),
      who: fc.nat({ max: PEOPLE - 1 }),
      path: fc.constantFrom(...PATHS),
      value: fc.oneof(fc.constant(null), fc.integer({ min: 0, max: 3 }), fc.constantFrom("0.35 Ω", "0.36 Ω")),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant("take-in" as const),
      who: fc.nat({ max: PEOPLE - 1 }),
      from: fc.nat({ max: PEOPLE - 1 }),
    }),
  },
);

/** Copies of several people after a history. */
function lived(history: readonly Step[]): readonly JobRecord[] {
  const copies = Array.from({ length: PEOPLE }, () => new JobRecord());
  for (const one of history) {
    const copy = copies[one.who] as JobRecord;
    if (one.kind === "write")
      copy.add(copy.next(`p${one.who}`, `person${one.who}`, "2026-11-01T10:00:00Z", one.path, one.value));
    else for (const entry of (copies[one.from] as JobRecord).entries()) copy.add(entry);
  }
  return copies;
}

const stateOf = (record: JobRecord) => PATHS.map((path) => record.standing(path).map(({ id }) => id));

describe("copies of a job join", () => {
  test("in any order, any number of times, to the same state: 10,000 histories", () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), fc.infiniteStream(fc.nat()), (history, picks) => {
        const all = lived(history).flatMap((copy) => copy.entries());
        const once = new JobRecord(all);
        const shuffled = [...all, ...all]
          .map((entry) => ({ entry, key: picks.next().value as number }))
          .sort((a, b) => a.key - b.key);
        const again = new JobRecord(shuffled.map(({ entry }) => entry));
        expect(stateOf(again)).toEqual(stateOf(once));
        expect(again.size).toBe(once.size);
        expect(documentOf(again)).toEqual(documentOf(once));
      }),
      { numRuns: 10_000 },
    );
  });

  test("losing nothing: what anybody wrote last and nobody who knew of it replaced still stands", () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), (history) => {
        const copies = lived(history);
        const joined = new JobRecord(copies.flatMap((copy) => copy.entries()));
        for (const path of PATHS) {
          const all = joined.history(path).filter((entry) => entry.path === path);
          const replaced = (entry: Entry) =>
            all.some((later) => later.id !== entry.id && (later.seen[entry.author] ?? 0) >= entry.number);
          expect(new Set(joined.standing(path).map(({ id }) => id))).toEqual(
            new Set(all.filter((entry) => !replaced(entry)).map(({ id }) => id)),
          );
        }
      }),
      { numRuns: 2000 },
    );
  });

  test("different values written apart both stand until somebody who sees both chooses", () => {
    const [mine, theirs] = lived([
      { kind: "write", who: 0, path: "supply/readings/ze", value: "0.35 Ω" },
      { kind: "write", who: 1, path: "supply/readings/ze", value: "0.36 Ω" },
    ]) as [JobRecord, JobRecord];
    for (const entry of theirs.entries()) mine.add(entry);
    expect(mine.conflicts()).toEqual(["supply/readings/ze"]);
    expect(mine.value("supply/readings/ze")).toBeUndefined();
    expect(documentOf(mine)).toEqual({});
    mine.add(mine.next("p0", "person0", "2026-11-01T11:00:00Z", "supply/readings/ze", "0.36 Ω"));
    expect(mine.conflicts()).toEqual([]);
    expect(mine.value("supply/readings/ze")).toBe("0.36 Ω");
    expect(mine.history("supply/readings/ze")).toHaveLength(3);
  });

  test("the same value written apart is no conflict", () => {
    const copies = lived([
      { kind: "write", who: 0, path: "supply/readings/ze", value: { shown: "0.35 Ω" } },
      { kind: "write", who: 1, path: "supply/readings/ze", value: { shown: "0.35 Ω" } },
    ]);
    const joined = new JobRecord(copies.flatMap((copy) => copy.entries()));
    expect(joined.conflicts()).toEqual([]);
    expect(joined.value("supply/readings/ze")).toEqual({ shown: "0.35 Ω" });
  });
});

describe("a record and an inspection file", () => {
  test.each(["terraced-house", "farmhouse", "workshop"])("%s comes back with everything it held", (name) => {
    const text = readFileSync(new URL(`../../../../examples/${name}.json`, import.meta.url), "utf8");
    const record = new JobRecord();
    for (const [path, value] of placesOf(JSON.parse(text)))
      record.add(record.next("a", "", "2026-11-01T10:00:00Z", path, value));
    const parsed = parseInspection(JSON.stringify(documentOf(record)));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 5)));
    const original = parseInspection(text);
    if (!original.ok) throw new Error("the example does not parse");
    expect(parsed.file).toEqual(original.file);
  });

  test("steps for safety go in and come out whole, and what is the record's own stays out of the file", () => {
    const at = "2026-11-01T10:00:00Z";
    const data = {
      precautions: [
        { step: "covers.dead", outcome: "done", at, by: "p" },
        { step: "covers.locked", outcome: "not-applicable", at },
      ],
      earthingOff: [{ off: { at, by: "p" }, on: { at } }, { off: { at } }],
    };
    const record = new JobRecord();
    for (const [path, value] of [...placesOf(data), ["~earlier/a", { id: "a" }] as const])
      record.add(record.next("a", "", at, path, value));
    expect(record.value("precautions/m0000")).toEqual(data.precautions[0]);
    expect(record.value("earthingOff/m0000/on")).toEqual({ at });
    expect(documentOf(record)).toEqual(data);
  });

  test("a member taken out is gone from the file and stays in the history", () => {
    const record = new JobRecord();
    const write = (path: string, value: Value) => record.add(record.next("a", "", "2026-11-01T10:00:00Z", path, value));
    write("people/p", true);
    write("people/p/name", "A. Sample");
    write("people/q", true);
    write(`people/q/${ORDER}`, 0);
    write("people/p", null);
    expect(documentOf(record)).toEqual({ people: [{ id: "q" }] });
    expect(record.history("people/p").length).toBe(3);
  });
});

test("values are compared member by member", () => {
  expect(equal({ a: 1, b: [1, 2] }, { b: [1, 2], a: 1 })).toBe(true);
  expect(equal([1], { 0: 1 })).toBe(false);
  expect(equal({ a: 1 }, { a: 1, b: 2 })).toBe(false);
  expect(equal(null, {})).toBe(false);
});

describe("a member taken out by one while another, not knowing of it, writes in it", () => {
  const AT = "2026-11-01T10:00:00Z";
  const circuit = "boards/b/circuits/c";
  const apart = () => {
    const [mine, theirs] = [new JobRecord(), new JobRecord()];
    for (const path of ["boards/b", circuit]) mine.add(mine.next("a", "", AT, path, true));
    for (const entry of mine.entries()) theirs.add(entry);
    mine.add(mine.next("a", "", AT, circuit, null));
    theirs.add(theirs.next("b", "", AT, `${circuit}/readings/zs`, { shown: "0.4 Ω" }));
    return new JobRecord([...mine.entries(), ...theirs.entries()]);
  };

  test("stays with what was written, and is told", () => {
    const joined = apart();
    expect(membersOf(joined, "boards/b/circuits")).toEqual(["c"]);
    expect(takenOutAndWritten(joined)).toEqual([circuit]);
    expect(JSON.stringify(documentOf(joined))).toContain("0.4 Ω");
  });

  test.each([
    { value: null, members: [] },
    { value: true, members: ["c"] },
  ])("goes or stays by whoever sees both: $value", ({ value, members }) => {
    const joined = apart();
    joined.add(joined.next("a", "", AT, circuit, value));
    expect(takenOutAndWritten(joined)).toEqual([]);
    expect(membersOf(joined, "boards/b/circuits")).toEqual(members);
  });
});

test("a name that objects have already is a member like any other in the file", () => {
  const record = new JobRecord();
  record.add(record.next("a", "", "2026-11-01T10:00:00Z", "observations/o/facts/__proto__", { notKnown: "x" }));
  expect(({} as { notKnown?: unknown }).notKnown).toBeUndefined();
  expect(JSON.stringify(documentOf(record))).toContain('"__proto__":{"notKnown":"x"}');
});
