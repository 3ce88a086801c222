import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { casesIn, toldOf } from "./fault-cases.ts";

const CASES = casesIn(readFileSync(new URL("faults.txt", import.meta.url), "utf8"));

describe("each kind of fault is told once, with its place, the line, where it stands, what may stand there, what to do", () => {
  test("there are enough kinds, each of its own", () => {
    expect(CASES.length).toBeGreaterThan(100);
    expect(new Set(CASES.map(({ name }) => name)).size).toBe(CASES.length);
  });

  test.each(CASES.map((one) => [one.name, one] as const))("%s", (_, { text, told }) => {
    expect(toldOf(text)).toBe(told);
    expect(told.match(/^ {2}expected: /gm)).toHaveLength(1);
  });
});
