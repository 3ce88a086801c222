import { readFileSync } from "node:fs";
import { parseInspectionData } from "@good-grounds/inspection";
import { describe, expect, it } from "vitest";
import { documentOf, placesOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { Record as JobRecord } from "../../record/record.ts";
import { askedOf } from "../observations/asked.ts";
import { addThing } from "./recorded.ts";
import { means, namedBy, type Speakable, speakable, speakOf } from "./spoken-of.ts";

const HOUSE = new URL("../../../../../examples/terraced-house.json", import.meta.url);
const AT = "observations/o1";

function write(record: JobRecord, changes: readonly (readonly [string, Value])[]): void {
  for (const [path, value] of changes) record.add(record.next("a", "", "2026-11-01T10:00:00Z", path, value));
}

function house(): JobRecord {
  const record = new JobRecord();
  write(record, placesOf(JSON.parse(readFileSync(HOUSE, "utf8"))));
  write(record, [["boards/cu/rcds/main-rcd/serves", "listed"]]);
  return record;
}

const named = (record: JobRecord, id: string): Speakable => {
  const found = speakable(record, AT).find((one) => one.id === id);
  if (found === undefined) throw new Error(`${id} cannot be spoken of`);
  return found;
};

describe("what an observation speaks of", () => {
  it("is picked from things, main bonds and RCDs, those at its place first to hand", () => {
    const record = house();
    const all = speakable(record, AT).map(({ id, isHere }) => [id, isHere]);
    expect(all).toContainEqual(["surge-1", true]);
    expect(all).toContainEqual(["water", false]);
    expect(all).toContainEqual(["main-rcd", true]);
    const atOrigin = speakable(record, "observations/o2").map(({ id, isHere }) => [id, isHere]);
    expect(atOrigin).toContainEqual(["water", true]);
    expect(atOrigin).toContainEqual(["surge-1", false]);
  });

  it("is in the file as the file has it, and is asked about", () => {
    const record = house();
    const { name, changes } = addThing(record, "enclosures", { board: "cu", circuit: "c4" });
    write(record, changes);
    for (const id of [name, "main-rcd", "water"]) write(record, speakOf(record, AT, named(record, id)));
    write(record, [[`${AT}/things/${name}/quantity`, 3]]);
    const parsed = parseInspectionData(documentOf(record));
    expect(parsed.ok ? [] : parsed.issues.filter(({ path }) => path[0] === "observations")).toEqual([]);
    expect((documentOf(record).observations as { things?: Value }[])[0]?.things).toEqual([
      { thing: name, quantity: 3 },
      { thing: "main-rcd", board: "cu" },
      { thing: "water" },
    ]);
    expect(askedOf(record, AT).place.parts?.map(({ id }) => id)).toEqual([name, "main-rcd", "water"]);
  });

  it("is one mention where two copies tick the same, and none where it is unticked", () => {
    const [one, two] = [house(), house()];
    for (const record of [one, two]) write(record, speakOf(record, AT, named(record, "surge-1")));
    for (const entry of two.entries()) one.add({ ...entry, author: "b", id: `b:${entry.number}` });
    expect(namedBy(one, AT).map(({ id }) => id)).toEqual(["surge-1"]);
    const again = house();
    write(again, speakOf(again, AT, named(again, "surge-1")));
    const [mention] = namedBy(again, AT);
    write(again, [
      [`${mention?.at}/quantity`, 4],
      [mention?.at ?? "", null],
    ]);
    expect(namedBy(again, AT)).toEqual([]);
    write(again, speakOf(again, AT, named(again, "surge-1")));
    expect((documentOf(again).observations as { things?: Value }[])[0]?.things).toEqual([{ thing: "surge-1" }]);
  });

  it("means an RCD of the observation's own board where no board is named", () => {
    const record = house();
    const rcd = named(record, "main-rcd");
    expect(means(record, AT, { at: "", id: "main-rcd", board: undefined }, rcd)).toBe(true);
    expect(means(record, AT, { at: "", id: "main-rcd", board: "shed" }, rcd)).toBe(false);
    expect(means(record, "observations/o2", { at: "", id: "main-rcd", board: undefined }, rcd)).toBe(false);
    expect(means(record, AT, { at: "", id: "water", board: "cu" }, named(record, "water"))).toBe(false);
  });
});
