import { readFileSync } from "node:fs";
import { parseInspection, printInspection, resolveInstallation } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { SCENARIOS, textOf } from "./scenarios/index.ts";

describe.each(Object.entries(SCENARIOS))("%s", (name, make) => {
  const text = readFileSync(new URL(`${name}.json`, import.meta.url), "utf8");

  test("is written again byte for byte by its scenario", () => {
    expect(textOf(make())).toBe(text);
  });

  test("parses, says that it is invented, and prints back to the same bytes", () => {
    const parsed = parseInspection(text);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues, null, 1));
    expect(parsed.file.invented).toBe(true);
    expect(printInspection(parsed.file)).toBe(text);
    expect(resolveInstallation(parsed.file).circuits.length).toBeGreaterThan(5);
  });
});
