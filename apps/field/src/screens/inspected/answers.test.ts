import { ITEM_GROUPS, ITEMS, type KnownItem } from "@good-grounds/inspection";
import { expect, test } from "vitest";
import { documentOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { Record as JobRecord } from "../../record/record.ts";
import { absentees, answered, answering, answeringAbsent, placeOf, placesByItem } from "./answers.ts";

const AT = "2026-11-01T10:00:00Z";
const BATHROOMS: readonly KnownItem[] = ITEM_GROUPS.find(({ id }) => id === "bathrooms")?.items ?? [];

function job() {
  const record = new JobRecord();
  const write = (changes: readonly (readonly [path: string, value: Value])[]) => {
    for (const [path, value] of changes) record.add(record.next("a", "", AT, path, value));
  };
  return { record, write };
}

test("nothing is answered beforehand, and an answer counts when it has what it needs", () => {
  const { record, write } = job();
  expect(answered(record)).toBe(0);
  const place = placeOf(placesByItem(record), "intake.meter");
  for (const outcome of ["limited", "not-verified"] as const) {
    write(answering(record, place, "intake.meter", outcome));
    expect(answered(record)).toBe(0);
    write([[`${place}/reason`, "locked"]]);
    expect(answered(record)).toBe(1);
    write(answering(record, place, "intake.meter", "in-order"));
    expect(record.value(`${place}/reason`)).toBeUndefined();
    expect(answered(record)).toBe(1);
  }
  write(answering(record, place, "intake.meter", "observed"));
  expect(answered(record)).toBe(0);
  write([[`${place}/observations`, ["o1"]]]);
  expect(answered(record)).toBe(1);
  expect(documentOf(record)).toEqual({
    inspected: [{ item: "intake.meter", outcome: "observed", observations: ["o1"] }],
  });
});

test("an answer that came from a file is changed where it stands, not given twice", () => {
  const { record, write } = job();
  write([
    ["inspected/m0003", true],
    ["inspected/m0003/item", "intake.meter"],
    ["inspected/m0003/outcome", "in-order"],
  ]);
  const place = placeOf(placesByItem(record), "intake.meter");
  expect(place).toBe("inspected/m0003");
  write(answering(record, place, "intake.meter", "not-applicable"));
  expect(documentOf(record)).toEqual({ inspected: [{ item: "intake.meter", outcome: "not-applicable" }] });
});

test("what is not there answers only the open items that rest on it, with that as the reason", () => {
  const { record, write } = job();
  const [first, ...others] = BATHROOMS;
  if (first === undefined) throw new Error("no such group");
  write(answering(record, placeOf(placesByItem(record), first.id), first.id, "in-order"));
  const open = absentees(record, BATHROOMS);
  expect([...open]).toEqual([["bath-or-shower", others.map(({ id }) => id)]]);
  for (const [circumstance, items] of open) write(answeringAbsent(record, circumstance, items));
  expect(answered(record, BATHROOMS)).toBe(BATHROOMS.length);
  expect(record.value(`inspected/${first.id}/outcome`)).toBe("in-order");
  expect(record.value(`inspected/${others[0]?.id}/reason`)).toMatch(/bath or shower/);
  expect(absentees(record, BATHROOMS).size).toBe(0);
});

test("everything is answered when every item is", () => {
  const { record, write } = job();
  for (const { id } of ITEMS) write(answering(record, placeOf(placesByItem(record), id), id, "in-order"));
  expect(answered(record)).toBe(ITEMS.length);
});
