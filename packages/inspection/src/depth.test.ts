import fc from "fast-check";
import { expect, test } from "vitest";
import { deeperThan } from "./depth.ts";
import { parseInspection } from "./parse.ts";

function depthOf(value: unknown): number {
  if (typeof value !== "object" || value === null) return 0;
  return 1 + Math.max(0, ...Object.values(value).map(depthOf));
}

test("the depth of any JSON text is that of its value, whatever stands in its strings", () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 6 }), fc.constantFrom(undefined, 2), (value, space) => {
      const depth = depthOf(value);
      const text = JSON.stringify(value, null, space);
      expect(deeperThan(text, depth)).toBe(false);
      if (depth > 0) expect(deeperThan(text, depth - 1)).toBe(true);
    }),
  );
  expect(deeperThan(JSON.stringify(['"[[[[', "\\", "]"]), 1)).toBe(false);
});

test("a file of nothing but nesting is refused before it is unfolded", () => {
  const text = `{"format":"good-grounds-inspection","version":2,"a":${"[".repeat(3_000_000)}${"]".repeat(3_000_000)}}`;
  expect(parseInspection(text)).toMatchObject({ ok: false, issues: [{ code: "too-deep", path: [] }] });
});
