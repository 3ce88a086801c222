import { PRECAUTIONS } from "@good-grounds/inspection";
import { expect, test } from "vitest";
import { documentOf, placesOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { Record as JobRecord } from "../../record/record.ts";
import { STAGES, STEPS, type Stage } from "../../words/cautions.ts";
import { confirmedSteps, confirming, stepsOf } from "./precautions.ts";

function job() {
  const record = new JobRecord();
  const write = ([path, value]: readonly [path: string, value: Value]) =>
    record.add(record.next("a", "", "2026-11-01T10:00:00Z", path, value));
  return { record, write };
}

test("every step belongs to a stage and has its words", () => {
  const staged = (Object.keys(STAGES) as Stage[]).flatMap(stepsOf);
  expect(staged).toEqual(PRECAUTIONS);
  expect(Object.keys(STEPS).sort()).toEqual([...PRECAUTIONS].sort());
});

test("a step is confirmed with name and time, and taken back", () => {
  const { record, write } = job();
  write(confirming(record, "covers.dead", "done", "p"));
  expect(confirmedSteps(record).get("covers.dead")).toMatchObject({ outcome: "done", by: "p" });
  write(confirming(record, "covers.dead", undefined, "p"));
  expect(confirmedSteps(record).size).toBe(0);
  expect(record.history("precautions").length).toBe(2);
});

test("a step that came from a file is changed where it stands", () => {
  const { record, write } = job();
  const data = { precautions: [{ step: "covers.dead", outcome: "not-applicable", at: "2026-11-01T09:00:00Z" }] };
  for (const place of placesOf(data)) write(place);
  write(confirming(record, "covers.dead", "done", ""));
  expect((documentOf(record) as { precautions: readonly Value[] }).precautions).toHaveLength(1);
  expect(confirmedSteps(record).get("covers.dead")).toMatchObject({ outcome: "done", by: undefined });
});
