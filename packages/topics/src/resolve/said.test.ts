import { leavesOf } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { readLibrary } from "../library.ts";
import { printDocument } from "../print/document.ts";
import { readDocument } from "../read/document.ts";

const SHARED = {
  file: "shared/cover.topic",
  text: `shared cover: What covers a live part

  fact bare: Is the part bare?
    found by glance
    no: it is covered
    yes: it is bare
`,
};

const textOf = (given: string, ...fits: readonly string[]) => `topic some-part: Some part
  in boards
  uses bare
${given}
  fact gap: How large is the gap?
    found by glance
    tight: tight
    wide: wide

  remedy: Close it.
    makes gap tight
${fits.map((line) => `    ${line}\n`).join("")}`;

function remedyOf(text: string) {
  const { topics, faults } = readLibrary([SHARED, { file: "boards/some-part.topic", text }]);
  expect(faults).toEqual([]);
  const [remedy] = topics[0]?.remedies ?? [];
  if (remedy === undefined) throw new Error("no remedy");
  return remedy;
}

describe("where a remedy fits", () => {
  test("is everywhere where nothing is said of it", () => {
    expect(remedyOf(textOf("")).where).toBeUndefined();
  });

  test("is read as a rule, on one line or below it, and printed back", () => {
    for (const fits of [["fits when gap is wide and bare"], ["fits when all of", "  gap is wide", "  bare"]]) {
      const text = textOf("", ...fits);
      const { where } = remedyOf(text);
      expect(where?.op).toBe("all");
      expect([...leavesOf(where ?? { op: "never" })].map((leaf) => ("fact" in leaf ? leaf.fact : ""))).toEqual([
        "gap",
        "bare",
      ]);
      const { document } = readDocument(text, "some-part.topic");
      expect(document === undefined ? "" : printDocument(document)).toContain("    fits when gap is wide and bare\n");
    }
  });

  test("leaves out what the subject itself says", () => {
    const { where } = remedyOf(textOf("  given bare yes\n", "fits when gap is wide and bare"));
    expect([...leavesOf(where ?? { op: "never" })].map((leaf) => ("fact" in leaf ? leaf.fact : ""))).toEqual(["gap"]);
  });
});
