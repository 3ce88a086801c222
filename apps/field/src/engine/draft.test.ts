import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { draftOf } from "./draft.ts";
import { oneCircuit } from "./one-circuit.ts";
import type { Data } from "./protocol.ts";

const EXAMPLE = new URL("../../../../examples/terraced-house.json", import.meta.url);
const house = (): Data => JSON.parse(readFileSync(EXAMPLE, "utf8")) as Data;

describe("an unfinished document", () => {
  it("that has nothing yet can be read, and what a report needs is named", () => {
    const draft = draftOf({});
    expect(draft?.left).toEqual([]);
    expect(draft?.missing.map(({ words }) => words)).toContain("the client's name");
    // What only the format asks for, nobody is asked for.
    expect(draft?.missing.map(({ path }) => path[0])).not.toContain("photographs");
    // And nothing is made up.
    expect(draft?.file).toEqual({});
  });

  it("that is finished is left as it is", () => {
    const draft = draftOf(house());
    expect(draft?.missing).toEqual([]);
    expect(draft?.file).toEqual(house());
  });

  it("is not changed by being read", () => {
    const data = oneCircuit({});
    const before = structuredClone(data);
    draftOf(data);
    expect(data).toEqual(before);
  });

  it("keeps everything else when one value is damaged", () => {
    const draft = draftOf(oneCircuit({ zs: { shown: "1,2 ohm" }, r1r2: { shown: "0.40 Ω" } }));
    const [circuit] = draft?.file.boards?.[0]?.circuits ?? [];
    expect(circuit?.readings?.zs).toBeUndefined();
    expect(circuit?.readings?.r1r2).toEqual({ shown: "0.40 Ω" });
    expect(draft?.left[0]?.path.slice(-2)).toEqual(["zs", "shown"]);
  });

  it.each([
    ["a list where an object belongs", { supply: [] }],
    ["a word where a list belongs", { boards: "none" }],
    ["a number where an object belongs", { brief: 3, boards: [7, null, { id: "b" }] }],
    ["members that no file has", { boards: [{ id: "b", colour: "red", circuits: [{ id: "c", speed: 4 }] }] }],
    ["references that lead nowhere", { boards: [{ id: "b", circuits: [{ id: "c", rcd: { board: "no" } }] }] }],
    ["boards that feed each other", { boards: [{ id: "a", fedFrom: { board: "a", circuit: "x" }, circuits: [] }] }],
    ["two of the same name", { boards: [{ id: "a" }, { id: "a" }] }],
    ["another kind of document", { format: "something-else", version: 99 }],
  ])("survives %s", (_, data) => {
    const draft = draftOf(data);
    expect(draft).toBeDefined();
    expect(draft?.left.length).toBeGreaterThan(0);
  });

  it.each([[null], [[]], ["text"], [undefined]])("is none where there is no object: %s", (data) => {
    expect(draftOf(data)).toBeUndefined();
  });
});
