import { expect, test } from "vitest";
import type { Value } from "../record/entry.ts";
import { Record as JobRecord } from "../record/record.ts";
import { earthingOff, liveTests } from "./safety.ts";

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

const C = "boards/b/circuits/c";
const R1R2 = `${C}/readings/r1r2`;

test.each([
  ["r1r2", "0.40 Ω", undefined],
  ["r2Only", "0.31 Ω", undefined],
  ["r2", "0.50 Ω", undefined],
  ["r1", "0.50 Ω", "none"],
  ["zs", "0.80 Ω", "none"],
  ["r1r2", ">1999 Ω", "open"],
  // Chance metal: water in a conduit, a pipe, a damp wall.
  ["r1r2", "45 Ω", "too-high"],
  ["r2Only", "45 Ω", "too-high"],
  ["r1r2", "0.00 Ω", "nothing"],
])("live tests on %s of %s: %s", (name, shown, why) => {
  const record = new JobRecord();
  write(record, "a", `${C}/readings/${name}`, { shown });
  expect(liveTests(record, C)).toMatchObject({ open: why === undefined, reason: undefined });
  expect(liveTests(record, C).notProved?.kind).toBe(why);
  expect(liveTests(record, "boards/b/circuits/d").open).toBe(false);
});

test("a reading is held against the cable where its sizes and length are recorded", () => {
  const record = new JobRecord();
  write(record, "a", R1R2, { shown: "5.4 Ω" });
  expect(liveTests(record, C).notProved?.kind).toBe("too-high");
  for (const [name, value] of [
    ["material", "copper"],
    ["line", "1.5 mm²"],
    ["cpc", "1 mm²"],
    ["length", "180 m"],
  ] as const)
    write(record, "a", `${C}/cable/${name}`, value);
  expect(liveTests(record, C).open).toBe(true);
  write(record, "a", `${C}/cable/length`, "20 m");
  expect(liveTests(record, C)).toMatchObject({ open: false, notProved: { kind: "more-than-cable", shown: "5.4 Ω" } });
});

test("the supply being TT makes no chance metal a protective conductor", () => {
  const record = new JobRecord();
  write(record, "a", "supply/earthing", "TT");
  write(record, "a", R1R2, { shown: "45 Ω" });
  expect(liveTests(record, C).open).toBe(false);
});

test("one point of a ring that is open shuts them, whatever its ends say", () => {
  const record = new JobRecord();
  write(record, "a", `${C}/shape`, "ring");
  write(record, "a", `${C}/readings/r2`, { shown: "0.70 Ω" });
  expect(liveTests(record, C).open).toBe(true);
  write(record, "a", `${C}/readings/crossLineCpc/p1`, true);
  write(record, "a", `${C}/readings/crossLineCpc/p1/reading`, { shown: ">99.9 Ω" });
  expect(liveTests(record, C)).toMatchObject({ open: false, notProved: { kind: "open" } });
  write(record, "a", `${C}/readings/crossLineCpc/p1`, null);
  expect(liveTests(record, C).open).toBe(true);
});

test("where two copies have different readings the one that speaks against it counts", () => {
  const start = new JobRecord();
  write(start, "a", `${C}/designation`, "1");
  const [one, other] = [joined(start), joined(start)];
  write(one, "b", R1R2, { shown: "0.40 Ω" });
  write(other, "c", R1R2, { shown: ">1999 Ω" });
  expect(liveTests(joined(one, other), C)).toMatchObject({ open: false, notProved: { kind: "open" } });
});

test("a reading that was not taken proves nothing; a reason that is written opens live tests of that circuit alone", () => {
  const record = new JobRecord();
  write(record, "a", R1R2, { notTaken: "limited", reason: "no access" });
  expect(liveTests(record, C)).toMatchObject({
    open: false,
    notProved: { kind: "not-taken", name: "r1r2", reason: "no access" },
  });
  write(record, "a", `${C}/liveBeforeContinuity`, { reason: "fault finding", at: AT });
  expect(liveTests(record, C)).toMatchObject({ open: true, reason: "fault finding" });
  expect(liveTests(record, "boards/b/circuits/d").open).toBe(false);
  write(record, "a", `${C}/liveBeforeContinuity`, null);
  expect(liveTests(record, C)).toMatchObject({ open: false, reason: undefined });
});

test("a reason does not cover a reading that came after it and speaks against the conductor", () => {
  const record = new JobRecord();
  write(record, "a", `${C}/liveBeforeContinuity`, { reason: "no lead long enough", at: AT });
  expect(liveTests(record, C).open).toBe(true);
  write(record, "a", R1R2, { shown: ">1999 Ω" });
  expect(liveTests(record, C)).toMatchObject({ open: false, reason: "no lead long enough", reasonIsOlder: true });
  write(record, "a", `${C}/liveBeforeContinuity`, { reason: "to find where it is broken", at: AT });
  expect(liveTests(record, C)).toMatchObject({ open: true, reasonIsOlder: false });
});
