import { describe, expect, test } from "vitest";
import { droppedMembers } from "./dropped.ts";

const places = (document: unknown, accepted: unknown) =>
  droppedMembers(document, accepted)
    .map(({ path }) => path.join("/"))
    .sort();

describe("members that did not come through", () => {
  test.each([
    [{ a: 1, b: [{ c: 2 }] }, { a: 1, b: [{ c: 2 }] }, []],
    [{ a: 1, b: 2 }, { a: 1 }, ["b"]],
    [{ a: [{ b: 1, c: 2 }, { b: 1 }] }, { a: [{ b: 1 }, {}] }, ["a/0/c", "a/1/b"]],
    [{ a: [1, 2] }, { a: [1] }, ["a/1"]],
    [{ a: undefined }, {}, []],
    [JSON.parse('{"__proto__": 1}'), {}, ["__proto__"]],
    [JSON.parse('{"toString": 1}'), {}, ["toString"]],
    ["text", {}, []],
  ])("of %j in %j", (document, accepted, expected) => {
    expect(places(document, accepted)).toEqual(expected);
  });
});
