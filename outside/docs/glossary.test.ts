import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { glossary } from "../../scripts/glossary.ts";

test("the glossary names every term of the code as it stands", () => {
  const written = readFileSync(new URL("../../docs/glossary.md", import.meta.url), "utf8");
  expect(written).toBe(glossary());
  expect(written).not.toContain("| `?` |");
});
