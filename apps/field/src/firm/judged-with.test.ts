import { readFileSync } from "node:fs";
import { parseInspectionData } from "@good-grounds/inspection";
import { describe, expect, it } from "vitest";
import type { KeptFolder } from "../engine/folder-view.ts";
import { documentOf, placesOf } from "../record/document.ts";
import type { Value } from "../record/entry.ts";
import { Record as JobRecord } from "../record/record.ts";
import { judgedNow, judgedWith, standingOf } from "./judged-with.ts";

const HOUSE = new URL("../../../../examples/terraced-house.json", import.meta.url);

function jobOf(...places: readonly (readonly [string, Value])[]): JobRecord {
  const record = new JobRecord();
  for (const [path, value] of places) record.add(record.next("a", "", "2026-11-01T10:00:00Z", path, value));
  return record;
}

function folder(digit: string): KeptFolder {
  return {
    texts: [],
    label: { name: `Firm ${digit}`, answersFor: "A. Example", hash: digit.repeat(64) },
    provedBeside: "0",
  };
}

const OBSERVED = [
  ["observations/o1", true],
  ["observations/o1/topic", "ring-broken"],
] as const;

describe("the folder a job is judged with", () => {
  it("is written with the first judgement, and left alone from then on", () => {
    const record = jobOf(["observations/o1", true]);
    expect(judgedWith(record, folder("1"))).toEqual([
      ["topics", { name: "Firm 1", answersFor: "A. Example", hash: "1".repeat(64) }],
    ]);
    const judged = jobOf(...OBSERVED, judgedNow(folder("1")));
    expect(judgedWith(judged, folder("1"))).toEqual([]);
    expect(judgedWith(judged, folder("2"))).toEqual([]);
    expect(judgedWith(judged, undefined)).toEqual([]);
  });

  it("is told where it is another than the one of this device, or none", () => {
    const judged = jobOf(...OBSERVED, judgedNow(folder("1")));
    expect(standingOf(judged, folder("1"))).toEqual({ is: "same" });
    const before = "topics of Firm 1 (111111111111)";
    expect(standingOf(judged, folder("2"))).toEqual({ is: "other", before, now: "topics of Firm 2 (222222222222)" });
    expect(standingOf(judged, undefined)).toEqual({ is: "other", before, now: "the app's own topics" });
    expect(standingOf(jobOf(...OBSERVED), folder("1"))).toMatchObject({ is: "other", before: "the app's own topics" });
    expect(standingOf(jobOf(...OBSERVED), undefined)).toEqual({ is: "same" });
  });

  it("is told where two copies of a job say different things", () => {
    const record = jobOf(...OBSERVED);
    for (const [author, digit] of [
      ["b", "1"],
      ["c", "2"],
    ] as const) {
      const [path, value] = judgedNow(folder(digit));
      record.add({ ...jobOf().next(author, "", "2026-11-01T11:00:00Z", path, value), seen: {} });
    }
    expect(standingOf(record, folder("1"))).toMatchObject({ is: "other", before: expect.stringContaining("several") });
  });

  it("is in the inspection file, and comes back from it", () => {
    const data = JSON.parse(readFileSync(HOUSE, "utf8"));
    const record = jobOf(...placesOf(data), judgedNow(folder("1")));
    const parsed = parseInspectionData(documentOf(record));
    expect(parsed.ok && parsed.file.topics?.hash).toBe("1".repeat(64));
    const again = jobOf(...placesOf(documentOf(record)));
    expect(standingOf(again, folder("1"))).toEqual({ is: "same" });
  });
});
