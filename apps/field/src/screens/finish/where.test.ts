import { THING_KIND_IDS } from "@good-grounds/inspection";
import { expect, test } from "vitest";
import { Record as JobRecord } from "../../record/record.ts";
import { whereOf } from "./where.ts";

test("a trouble with a thing leads to its screen, with its reading to the keypad", () => {
  const record = new JobRecord();
  for (const kind of THING_KIND_IDS) expect(whereOf(record, `things/${kind}/a1/name`)).toEqual(["things", kind, "a1"]);
  expect(whereOf(record, "things/electrodes/rod/resistance")).toEqual(["things", "electrodes", "rod", "readings"]);
  expect(whereOf(record, "observations/o1/brings/electrodes/rod/resistance")).toEqual([
    "things",
    "electrodes",
    "rod",
    "readings",
  ]);
  expect(whereOf(record, "observations/o1/brings")).toEqual(["observations", "o1"]);
  expect(whereOf(record, "things")).toEqual(["things"]);
});
