import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type AnyField, fieldAfter, idOf } from "../../keypad/fields.ts";
import { documentOf, placesOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { Record as JobRecord } from "../../record/record.ts";
import { boardGroups } from "./board-fields.ts";
import { circuitGroups } from "./circuit-fields.ts";
import { circuitProgress } from "./progress.ts";

type Places = readonly (readonly [path: string, value: Value])[];

function job(places: Places): JobRecord {
  const record = new JobRecord();
  for (const [path, value] of places) record.add(record.next("a", "", "2026-01-01T00:00:00Z", path, value));
  return record;
}

function example(name: string): { readonly [name: string]: Value } {
  return JSON.parse(readFileSync(new URL(`../../../../../examples/${name}.json`, import.meta.url), "utf8"));
}

const AT = "boards/b/circuits/c";
const groups = (record: JobRecord) => circuitGroups(record, "b", "c", (list) => `fresh-${list.length}`);
const short = (field: AnyField | undefined) =>
  field === undefined ? "end" : idOf(field).replace(`at:${AT}/`, "").replace("readings/", "");

/** The way through the fields when each gets a value. */
function wayThrough(record: JobRecord, first: string): readonly string[] {
  const way: string[] = [];
  let current = groups(record)
    .flatMap(({ fields }) => fields)
    .find((field) => short(field) === first);
  while (current !== undefined && way.length < 40) {
    way.push(short(current));
    current = fieldAfter(record, groups(record), current);
  }
  return way;
}

describe("the order of the tests", () => {
  it("of a radial circuit is dead before live", () => {
    const record = job([
      [`${AT}/shape`, "radial"],
      [`${AT}/rcd`, { own: { type: "A" } }],
    ]);
    expect(wayThrough(record, "r1r2")).toEqual([
      "r1r2",
      "insulationVoltage",
      "insulationLiveLive",
      "insulationLiveEarth",
      "polarity",
      "zs",
      "rcd/own/atRated",
      "rcd/own/button",
    ]);
    const live = groups(record).filter(({ liveOf }) => liveOf !== undefined);
    expect(live.flatMap(({ fields }) => fields).map(short)).toEqual(expect.arrayContaining(["zs", "faultCurrent"]));
    expect(live.every(({ liveOf }) => liveOf === AT)).toBe(true);
  });

  it("of a ring begins with its ends and goes round its points", () => {
    const record = job([[`${AT}/shape`, "ring"]]);
    const way = wayThrough(record, "r1");
    expect(way.slice(0, 3)).toEqual(["r1", "rn", "r2"]);
    expect(way.indexOf("zs")).toBeGreaterThan(way.indexOf("insulationLiveEarth"));
    expect(way.filter((one) => one.includes("fresh-"))).toHaveLength(2);
  });

  it("passes by what has a value, and what is only asked for where somebody goes there", () => {
    const record = job([
      [`${AT}/shape`, "radial"],
      [`${AT}/readings/insulationVoltage`, "500 V"],
      [`${AT}/readings/insulationLiveLive`, { notTaken: "limited", reason: "neon lamps" }],
    ]);
    expect(wayThrough(record, "r1r2").slice(0, 2)).toEqual(["r1r2", "insulationLiveEarth"]);
  });

  it("does not ask for R1+R2 where R2 was measured by the long lead", () => {
    const record = job([[`${AT}/readings/r2Only`, { shown: "0.3 Ω" }]]);
    expect(circuitProgress(record, "b", "c")).toMatchObject({ done: 0 });
    expect(groups(record)[0]?.fields[0]?.optional).toBe(true);
  });
});

describe("a board's RCD", () => {
  it("is tested once for all the circuits it serves", () => {
    const record = job([
      ["boards/b/rcds/r", true],
      ["boards/b/rcds/r/serves", "listed"],
      [`${AT}/designation`, "4"],
      [`${AT}/rcd`, { board: "r" }],
      ["boards/b/circuits/d/designation", "5"],
      ["boards/b/circuits/d/rcd", { board: "r" }],
    ]);
    const group = boardGroups(record, "b").find(({ title }) => title.includes("r"));
    expect(group).toBeDefined();
    expect(boardGroups(record, "b").at(-1)?.help).toBe("serves 4, 5");
    expect(
      groups(record)
        .flatMap(({ fields }) => fields)
        .map(short)
        .some((one) => one.includes("atRated")),
    ).toBe(false);
  });
});

describe("a file taken into the record", () => {
  it.each(["terraced-house", "workshop", "farmhouse"])(
    "%s comes out again as it was, each reading one value",
    (name) => {
      const file = example(name);
      const record = job(placesOf(file));
      expect(documentOf(record)).toEqual(file);
      const split = placesOf(file).filter(([path]) => path.endsWith("/shown"));
      expect(split).toEqual([]);
    },
  );

  it("shows the readings of the house as taken", () => {
    const record = job(placesOf(example("terraced-house")));
    for (const circuit of ["c1", "c3", "c4"]) {
      const { done, all } = circuitProgress(record, "cu", circuit);
      expect({ circuit, done, all }).toMatchObject({ circuit, done: all });
    }
  });
});
