import { describe, expect, it } from "vitest";
import { documentOf, membersOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { Record as JobRecord } from "../../record/record.ts";
import { addMember, type Change, copyParticulars, moveMember, nextDesignation } from "./changes.ts";
import { treeOf } from "./tree.ts";

function job(...changes: readonly Change[]): {
  readonly record: JobRecord;
  readonly write: (changes: readonly Change[]) => void;
} {
  const record = new JobRecord();
  const write = (more: readonly Change[]) => {
    for (const [path, value] of more) record.add(record.next("a", "", "2026-01-01T00:00:00Z", path, value));
  };
  write(changes);
  return { record, write };
}

const LIST = "boards/cu/circuits";
const circuits = (record: JobRecord) => membersOf(record, LIST);

describe("ways of a board", () => {
  it("come at the end, or after another", () => {
    const { record, write } = job();
    for (const name of ["a", "b", "c"]) write(addMember(record, LIST, name));
    write(addMember(record, LIST, "d", "a"));
    write(addMember(record, LIST, "e", "a"));
    expect(circuits(record)).toEqual(["a", "e", "d", "b", "c"]);
  });

  it("keep their order when one is set between ways that never had one", () => {
    const { record, write } = job([`${LIST}/a`, true], [`${LIST}/b`, true]);
    write(addMember(record, LIST, "c", "a"));
    expect(circuits(record)).toEqual(["a", "c", "b"]);
  });

  it("move one place, and not beyond the ends", () => {
    const { record, write } = job([`${LIST}/a`, true], [`${LIST}/b`, true], [`${LIST}/c`, true]);
    write(moveMember(record, LIST, "c", -1));
    expect(circuits(record)).toEqual(["a", "c", "b"]);
    write(moveMember(record, LIST, "a", 1));
    expect(circuits(record)).toEqual(["c", "a", "b"]);
    expect(moveMember(record, LIST, "c", -1)).toEqual([]);
    expect(moveMember(record, LIST, "b", 1)).toEqual([]);
  });

  it("are taken out and put back with everything in them", () => {
    const { record, write } = job([`${LIST}/a`, true], [`${LIST}/a/description`, "lights"]);
    write([[`${LIST}/a`, null]]);
    expect(circuits(record)).toEqual([]);
    write([[`${LIST}/a`, true]]);
    expect(documentOf(record)).toEqual({ boards: [{ id: "cu", circuits: [{ id: "a", description: "lights" }] }] });
  });

  it("get the next number", () => {
    const { record } = job(
      [`${LIST}/a/designation`, "7"],
      [`${LIST}/b/designation`, "3a"],
      [`${LIST}/c/designation`, "L"],
    );
    expect(nextDesignation(record, "boards/cu")).toBe("8");
    expect(nextDesignation(record, "boards/other")).toBe("1");
  });
});

describe("particulars copied to another circuit", () => {
  const from: readonly Change[] = [
    [`${LIST}/a/device`, { type: "B", rated: "32 A" }],
    [`${LIST}/a/rcd`, { own: { type: "A", readings: { atRated: { shown: "28 ms" } } } }],
    [`${LIST}/a/cable/line`, "2.5 mm²"],
    [`${LIST}/a/cable/length`, "30 m"],
    [`${LIST}/a/readings/zs`, { shown: "0.5 Ω" }],
    [`${LIST}/b`, true],
  ];

  it("are never readings, tests or lengths", () => {
    const { record, write } = job(...from);
    write(copyParticulars(record, `${LIST}/a`, `${LIST}/b`));
    const [, b] = (documentOf(record).boards as readonly { readonly circuits: readonly Value[] }[])[0]?.circuits ?? [];
    expect(b).toEqual({
      id: "b",
      device: { type: "B", rated: "32 A" },
      rcd: { own: { type: "A" } },
      cable: { line: "2.5 mm²" },
    });
  });

  it("leave alone what is recorded there", () => {
    const { record, write } = job(...from, [`${LIST}/b/cable/line`, "4 mm²"]);
    write(copyParticulars(record, `${LIST}/a`, `${LIST}/b`));
    expect(record.value(`${LIST}/b/cable/line`)).toBe("4 mm²");
  });
});

describe("the line diagram", () => {
  it("sets a board in below the way that feeds it and loses none, whatever feeds it", () => {
    const { record } = job(
      ["boards/a/fedFrom", "supply"],
      ["boards/a/circuits/1", true],
      ["boards/a/circuits/2", true],
      ["boards/b/fedFrom", { board: "a", circuit: "1" }],
      ["boards/b/circuits/1", true],
      ["boards/c/fedFrom", { board: "gone", circuit: "9" }],
      ["boards/d/fedFrom", { board: "d", circuit: "1" }],
      ["boards/d/circuits/1", true],
    );
    expect(
      treeOf(record).map((row) => `${row.depth} ${row.board}${row.kind === "way" ? `/${row.circuit}` : ""}`),
    ).toEqual(["0 a", "0 a/1", "1 b", "1 b/1", "0 a/2", "0 c", "0 d", "0 d/1"]);
  });
});
