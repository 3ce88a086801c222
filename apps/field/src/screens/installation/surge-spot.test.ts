import { readDraft } from "@good-grounds/inspection";
import { describe, expect, it } from "vitest";
import { documentOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { Record as JobRecord } from "../../record/record.ts";
import { surgeSpot } from "./surge-spot.ts";
import { thingsAt } from "./things-at.ts";

function job(...places: readonly (readonly [string, Value])[]): JobRecord {
  const record = new JobRecord();
  for (const [path, value] of places) record.add(record.next("a", "", "2026-01-01T00:00:00Z", path, value));
  return record;
}

describe("surge protection of a board", () => {
  it("is a device of its own, made with the first answer", () => {
    const { path, along } = surgeSpot(job(["boards/cu", true]), "cu");
    const record = job(["version", 3], ["boards/cu", true], ...along, [path, false]);
    expect(documentOf(record).things).toEqual({ surgeDevices: [{ id: "surge-cu", board: "cu", fitted: false }] });
    expect(surgeSpot(record, "cu")).toEqual({ path, fitted: "yes-no", along: [] });
    expect(thingsAt(record, "cu")).toEqual(["things/surgeDevices/surge-cu"]);
    expect(thingsAt(record, "other")).toEqual([]);
  });

  it("stays where a job of before has it, and is read from there", () => {
    const record = job(["version", 2], ["boards/cu/name", "CU"], ["boards/cu/surgeProtection", "fitted"]);
    expect(surgeSpot(record, "cu")).toEqual({ path: "boards/cu/surgeProtection", fitted: "word", along: [] });
    const draft = readDraft(documentOf(record));
    expect(draft?.left).toEqual([]);
    expect(draft?.file.things?.surgeDevices).toEqual([{ id: "surge-1", board: "cu", fitted: true }]);
  });

  it("is found by its board, whatever its name", () => {
    const record = job(["things/surgeDevices/surge-1/board", "cu"], ["things/surgeDevices/surge-1/fitted", true]);
    expect(surgeSpot(record, "cu").path).toBe("things/surgeDevices/surge-1/fitted");
  });
});
