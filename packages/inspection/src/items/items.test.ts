import { describe, expect, test } from "vitest";
import { inspectionFile } from "../schema/file.ts";
import { CIRCUMSTANCES, ITEM_GROUP_IDS, ITEM_GROUPS, ITEM_IDS, ITEMS, itemById } from "./index.ts";

/** A number of the standard down to its last part, or a whole part of it. */
const REGULATION = /^(?:Part [1-8]|[1-8]\d{2}(?:\.\d{1,3}){0,4})$/;

describe("the inspection items", () => {
  test("have ids that occur once, each starting with the group it is found in", () => {
    expect(new Set(ITEM_IDS).size).toBe(ITEM_IDS.length);
    for (const group of ITEM_GROUPS) {
      for (const { id, group: own } of group.items) {
        expect(own).toBe(group.id);
        expect(id).toMatch(new RegExp(`^${group.id}\\.[a-z]+(-[a-z]+)*$`));
      }
    }
  });

  test("are grouped once each, in the order an inspector meets them", () => {
    expect(ITEM_GROUPS.map(({ id }) => id)).toEqual(ITEM_GROUP_IDS);
    expect(ITEM_GROUPS.flatMap(({ items }) => items.map(({ id }) => id))).toEqual(ITEM_IDS);
  });

  test.each(ITEMS.map((one) => [one.id, one] as const))(
    "%s names regulations of the standard, none twice",
    (_, one) => {
      expect(one.regulations.length).toBeGreaterThan(0);
      for (const number of one.regulations) expect(number).toMatch(REGULATION);
      expect(new Set(one.regulations).size).toBe(one.regulations.length);
    },
  );

  test("ask in plain words, each something else", () => {
    const asked = ITEMS.map(({ asks }) => asks);
    expect(new Set(asked).size).toBe(asked.length);
    for (const words of asked) expect(words).toMatch(/^[A-Z][^.?!]{9,110}$/);
  });

  test("use every circumstance, and most arise everywhere", () => {
    expect(new Set(ITEMS.map(({ applies }) => applies))).toEqual(new Set(CIRCUMSTANCES));
    expect(ITEMS.filter(({ applies }) => applies === "always").length).toBeGreaterThan(ITEMS.length / 2);
  });

  test("are found by id, and a name every object has is not an item", () => {
    for (const one of ITEMS) expect(itemById(one.id)).toBe(one);
    for (const name of ["", "intake", "intake.", "constructor", "__proto__", "toString"]) {
      expect(itemById(name)).toBeUndefined();
    }
  });

  test("are what the schema lets a file answer", () => {
    expect(inspectionFile.shape.inspected.element.shape.item.options).toEqual(ITEM_IDS);
  });
});
