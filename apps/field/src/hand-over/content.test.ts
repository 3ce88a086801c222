import { readFileSync } from "node:fs";
import { standingOf } from "@good-grounds/inspection";
import { expect, test } from "vitest";
import { placesOf } from "../record/document.ts";
import { Record as JobRecord } from "../record/record.ts";
import { contentHashes } from "./content.ts";

const FILE = JSON.parse(readFileSync(new URL("../../../../examples/terraced-house.json", import.meta.url), "utf8"));

function recordWith(...more: readonly (readonly [string, string])[]): JobRecord {
  const record = new JobRecord();
  for (const [path, value] of [...placesOf(FILE), ...more])
    record.add(record.next("a", "", "2026-11-01T10:00:00Z", path, value));
  return record;
}

test("a file that was signed stands as signed once it is a job, and not after a change", () => {
  const signed = recordWith();
  const changed = recordWith(["conclusion/generalCondition", "All is well."]);
  for (const { content } of FILE.signatures as { content: string }[]) {
    expect(standingOf(content, contentHashes(signed))).toBe("signed");
    expect(standingOf(content, contentHashes(changed))).toBe("changed");
  }
});
