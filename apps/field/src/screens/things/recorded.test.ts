import { readDraft, THING_KIND_IDS, THING_KINDS } from "@good-grounds/inspection";
import { describe, expect, it } from "vitest";
import { documentOf, placesOf, THING_LISTS } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { Record as JobRecord } from "../../record/record.ts";
import { addThing, removeThing, thingAt, thingName, thingsAt, thingsIn, unfolding } from "./recorded.ts";

type Change = readonly [string, Value];

function jobOf(...places: readonly Change[]): JobRecord {
  const record = new JobRecord();
  write(record, places);
  return record;
}

function write(record: JobRecord, places: readonly Change[], author = "a"): void {
  for (const [path, value] of places) record.add(record.next(author, "", "2026-11-01T10:00:00Z", path, value));
}

const BOARD = [
  ["version", 3],
  ["boards/cu", true],
  ["boards/cu/circuits/c1", true],
] as const;

describe("things of a job", () => {
  it("are of every kind the file has, each with fields", () => {
    expect([...THING_LISTS].sort()).toEqual([...THING_KIND_IDS].sort());
    for (const kind of THING_KIND_IDS) expect(Object.keys(THING_KINDS[kind].fields).length).toBeGreaterThan(2);
  });

  it.each(THING_KIND_IDS)("%s: added where they belong, in the file at once, and taken out", (kind) => {
    const record = jobOf(...BOARD);
    const { name, changes } = addThing(record, kind, { board: "cu", circuit: "c1" });
    write(record, changes);
    const draft = readDraft(documentOf(record));
    expect(draft?.left).toEqual([]);
    expect(draft?.file.things?.[kind]).toEqual([{ id: name, board: "cu", circuit: "c1" }]);
    const [thing] = thingsIn(record);
    expect(thing).toEqual({ kind, name, path: `things/${kind}/${name}`, broughtBy: undefined });
    expect(thingsAt(record, { board: "cu" })).toEqual([thing]);
    expect(thingsAt(record, { board: "cu", circuit: "c2" })).toEqual([]);
    expect(thingsAt(record, {})).toEqual([]);
    write(record, removeThing(record, thingAt(record, kind, name)?.path ?? "").changes);
    expect(thingsIn(record)).toEqual([]);
  });

  it("are called by their name, else by what they are and their number", () => {
    const record = jobOf(
      ["things/joints/j1", true],
      ["things/joints/j2", true],
      ["things/joints/j2/name", "in the loft"],
    );
    expect(thingsIn(record).map((thing) => thingName(record, thing))).toEqual(["joint 1", "in the loft"]);
  });

  it("go with every mention of them, and come back with it", () => {
    const record = jobOf(
      ["version", 3],
      ["things/enclosures/box", true],
      ["things/sections/s1", true],
      ["things/joints/j", true],
      ["things/joints/j/enclosure", "box"],
      ["things/joints/j/between", ["s1", "s2"]],
      ["observations/o1", true],
      ["observations/o1/things/box", true],
      ["observations/o1/things/box/thing", "box"],
    );
    const before = documentOf(record);
    const box = removeThing(record, "things/enclosures/box");
    const section = removeThing(record, "things/sections/s1");
    write(record, [...box.changes, ...section.changes]);
    expect(documentOf(record).things).toEqual({
      enclosures: [],
      sections: [],
      joints: [{ id: "j", between: ["s2"] }],
    });
    expect(documentOf(record).observations).toEqual([{ id: "o1", things: [] }]);
    write(record, [...box.undo, ...section.undo]);
    expect(documentOf(record)).toEqual(before);
  });

  it("written apart in two copies all stand, openings one by one", () => {
    const [one, two] = [jobOf(...BOARD), jobOf(...BOARD)];
    const enclosure = "things/enclosures/box";
    write(
      one,
      [
        [enclosure, true],
        [`${enclosure}/openings/g1`, true],
        [`${enclosure}/openings/g1/width`, "10 mm"],
      ],
      "b",
    );
    write(
      two,
      [
        [enclosure, true],
        [`${enclosure}/openings/g2`, true],
        [`${enclosure}/openings/g2/width`, "20 mm"],
      ],
      "c",
    );
    for (const entry of two.entries()) one.add(entry);
    expect(one.conflicts()).toEqual([]);
    expect(documentOf(one).things).toEqual({
      enclosures: [{ id: "box", openings: [{ width: "10 mm" }, { width: "20 mm" }] }],
    });
  });

  it("that an observation brings in are found, and come back from a file as they were", () => {
    const data = {
      version: 3,
      observations: [
        {
          id: "o1",
          things: [{ thing: "box", quantity: 2 }],
          brings: {
            enclosures: [{ id: "box", kind: "box", openings: [{ shape: "round", width: "12 mm" }] }],
            electrodes: [{ id: "rod", resistance: { shown: "91 Ω" } }],
          },
        },
      ],
    } as const;
    const record = jobOf(...placesOf(data as unknown as { readonly [name: string]: Value }));
    expect(documentOf(record)).toEqual(data);
    const found = thingsIn(record);
    expect(found.map(({ kind, name, broughtBy }) => [kind, name, broughtBy])).toEqual([
      ["enclosures", "box", "o1"],
      ["electrodes", "rod", "o1"],
    ]);
    expect(record.value(`${found[0]?.path}/openings/m0000/width`)).toBe("12 mm");
  });

  it("that an earlier version wrote as one value are in the file, and can be taken apart to be edited", () => {
    const brings = [{ id: "box", openings: [{ width: "12 mm" }] }];
    const record = jobOf(
      ["version", 3],
      ["observations/o1", true],
      ["observations/o1/brings/enclosures", brings],
      ["things/enclosures/e", true],
      ["things/enclosures/e/openings", [{ width: "9 mm" }]],
    );
    const before = documentOf(record);
    expect(before.observations).toEqual([{ id: "o1", brings: { enclosures: brings } }]);
    write(record, unfolding(record));
    expect(documentOf(record)).toEqual(before);
    expect(unfolding(record)).toEqual([]);
    expect(thingsIn(record).map(({ path }) => path)).toEqual([
      "things/enclosures/e",
      "observations/o1/brings/enclosures/box",
    ]);
    expect(record.value("things/enclosures/e/openings/m0000/width")).toBe("9 mm");
  });
});
