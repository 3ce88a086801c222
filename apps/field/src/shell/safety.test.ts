import { expect, test } from "vitest";
import type { Value } from "../record/entry.ts";
import { Record as JobRecord } from "../record/record.ts";
import { continuityProved, earthingOff, mayTestLive } from "./safety.ts";

const AT = "2026-11-01T10:00:00Z";
const write = (record: JobRecord, author: string, path: string, value: Value) =>
  record.add(record.next(author, "", AT, path, value));
const joined = (...copies: readonly JobRecord[]) => new JobRecord(copies.flatMap((copy) => copy.entries()));

function off(author: string, name: string, record = new JobRecord()): JobRecord {
  write(record, author, `earthingOff/${name}`, true);
  write(record, author, `earthingOff/${name}/off`, { at: AT, by: author });
  return record;
}

test("the earthing conductor is off from its disconnection until its reconnection", () => {
  const record = off("a", "e1");
  expect(earthingOff(new JobRecord())).toBeUndefined();
  expect(earthingOff(record)).toEqual({ open: ["earthingOff/e1"], since: AT, by: "a" });
  write(record, "a", "earthingOff/e1/on", { at: AT });
  expect(earthingOff(record)).toBeUndefined();
});

test("in a joined job it is off as long as one of the copies has it off", () => {
  const one = off("a", "e1");
  write(one, "a", "earthingOff/e1/on", { at: AT });
  const other = off("b", "e2");
  expect(earthingOff(joined(one, other))?.open).toEqual(["earthingOff/e2"]);
  // One copy takes the reconnection back while the other writes it: in doubt it is off.
  const start = off("a", "e1");
  const [back, taken] = [joined(start), joined(start)];
  write(back, "b", "earthingOff/e1/on", { at: AT });
  write(taken, "c", "earthingOff/e1/on", null);
  expect(earthingOff(joined(back, taken))?.open).toEqual(["earthingOff/e1"]);
});

test.each([
  ["r1r2", "0.40 Ω", true],
  ["r2Only", "0.31 Ω", true],
  ["r2", "0.50 Ω", true],
  ["r1", "0.50 Ω", false],
  ["zs", "0.80 Ω", false],
  ["r1r2", ">1999 Ω", false],
])("continuity by %s of %s: %s", (name, shown, proved) => {
  const record = new JobRecord();
  write(record, "a", `boards/b/circuits/c/readings/${name}`, { shown });
  expect(continuityProved(record, "boards/b/circuits/c")).toBe(proved);
  expect(mayTestLive(record, "boards/b/circuits/c")).toBe(proved);
  expect(continuityProved(record, "boards/b/circuits/d")).toBe(false);
});

test("a reading that was not taken proves nothing; a reason that is written opens live tests of that circuit alone", () => {
  const record = new JobRecord();
  write(record, "a", "boards/b/circuits/c/readings/r1r2", { notTaken: "limited", reason: "no access" });
  expect(mayTestLive(record, "boards/b/circuits/c")).toBe(false);
  write(record, "a", "boards/b/circuits/c/liveBeforeContinuity", { reason: "fault finding", at: AT });
  expect(mayTestLive(record, "boards/b/circuits/c")).toBe(true);
  expect(mayTestLive(record, "boards/b/circuits/d")).toBe(false);
  write(record, "a", "boards/b/circuits/c/liveBeforeContinuity", null);
  expect(mayTestLive(record, "boards/b/circuits/c")).toBe(false);
});
