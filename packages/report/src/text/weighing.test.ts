import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { EXAMPLE, inputOf } from "../../../../outside/reports/example.ts";
import { renderWeighing } from "./weighing.ts";

const read = (name: string) => readFileSync(new URL(`../../../../examples/${name}.json`, import.meta.url), "utf8");

describe("the weighing as text", () => {
  test.each(["terraced-house", "farmhouse", "workshop"])(
    "of the %s: every tightest check has its part in hand",
    (name) => {
      const text = renderWeighing(inputOf(read(name))).replaceAll(/\n {13}/g, " ");
      const tightest = text.split("\n").filter((line) => line.includes("tightest:"));
      expect(tightest.length).toBeGreaterThan(3);
      for (const line of tightest) expect(line).toMatch(/tightest: .+, \d+\u00a0?\s?% in hand$/);
    },
  );

  test("a limit that is itself a band shows it, in words and in the bar", () => {
    const text = renderWeighing(inputOf(EXAMPLE));
    expect(text).toContain("In 40 A at most Iz 27.0 A (27.0 A to 47.0 A)");
    expect(text).toMatch(/\|=+o=*>? −48/);
  });

  test("what should agree and does not is not said to agree", () => {
    expect(renderWeighing(inputOf(EXAMPLE))).not.toContain("agrees with (r1+r2)");
  });

  test("observations stand in the order of their numbers", () => {
    const numbers = [
      ...renderWeighing(inputOf(EXAMPLE))
        .split("\nObservations\n")
        .slice(1)
        .join("")
        .matchAll(/\(observation\s+(\d+)\)/g),
    ];
    expect(numbers.map(([, number]) => Number(number))).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });
});
