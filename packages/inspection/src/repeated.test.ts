import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { repeatedMembers } from "./repeated.ts";

const places = (text: string) => repeatedMembers(text).map(({ path }) => path.join("/"));

describe("names that stand twice in a JSON text", () => {
  test.each([
    ['{"a":1,"a":2}', ["a"]],
    ['{"a":1,"b":{"a":1,"c":[{"d":1},{"d":1,"e":2,"d":3}]}}', ["b/c/1/d"]],
    ['{"a":1,"a":2,"a":3}', ["a", "a"]],
    ['{"a":1, "\\u0061" : 2}', ["a"]],
    ['{"a\\"":1,"a\\\\":2,"a\\\\\\"":3,"a\\"":4}', ['a"']],
    ['{"__proto__":1,"__proto__":2}', ["__proto__"]],
    ['[[],{},"a","a",{"x":"{\\"x\\":1,\\"x\\":2}"}]', []],
    ['{"a":"b","b":"a","":{"":[1,2]}}', []],
  ])("%s", (text, expected) => {
    expect(() => JSON.parse(text)).not.toThrow();
    expect(places(text)).toEqual(expected);
  });

  test("are never found in what a program printed, and always where one is put in", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), fc.string(), fc.jsonValue(), (value, name, twice) => {
        for (const space of [0, 2]) expect(places(JSON.stringify(value, null, space))).toEqual([]);
        const member = `${JSON.stringify(name)}: ${JSON.stringify(twice)}`;
        expect(places(`[${JSON.stringify(value)}, {${member}, "other ${name.length}": 1, ${member}}]`)).toEqual([
          `1/${name}`,
        ]);
      }),
    );
  });

  test("are found at any depth without running out of stack", () => {
    const deep = 100_000;
    expect(places(`${'{"a":'.repeat(deep)}{"b":1,"b":2}${"}".repeat(deep)}`)).toEqual([`${"a/".repeat(deep)}b`]);
  });
});
