import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { topicsMarkdown } from "../topics/topics-markdown.ts";

test("the list of topics is that of the code as it stands", () => {
  expect(readFileSync(new URL("../../docs/topics.md", import.meta.url), "utf8")).toBe(topicsMarkdown());
});
