import { expect, test } from "vitest";
import type { Value } from "../../record/entry.ts";
import { Record as JobRecord } from "../../record/record.ts";
import { askedOf } from "./asked.ts";

function placeOf(members: Readonly<Record<string, Value>>) {
  const record = new JobRecord();
  const write = (path: string, value: Value) => record.add(record.next("a", "", "2026-11-01T10:00:00Z", path, value));
  write("observations/o", true);
  for (const [name, value] of Object.entries(members)) write(`observations/o/${name}`, value);
  return askedOf(record, "observations/o").place;
}

test("an observation is asked about at its place", () => {
  expect(placeOf({})).toEqual({});
  expect(placeOf({ board: "cu" })).toEqual({ board: "cu" });
  expect(placeOf({ board: "cu", circuit: "c1" })).toEqual({ board: "cu", circuit: "c1" });
});

test("and about the RCDs and bonding conductors that it names, as in the file", () => {
  const answers = [
    { check: "bonding-size", part: "water" },
    { check: "rcd-time", board: "cu", part: "main" },
    { check: "polarity" },
  ];
  expect(placeOf({ answers })).toEqual({ parts: [{ id: "water" }, { id: "main", board: "cu" }] });
});

test("and about the things that it speaks of or brings in, which answer its facts in the report", () => {
  const members = {
    "things/m0": true,
    "things/m0/thing": "cupboard",
    "things/m1": true,
    "things/m1/thing": "main",
    "things/m1/board": "cu",
    "things/m2": null,
    "things/m2/thing": "taken-out",
    "brings/enclosures/lid": true,
    "brings/joints/j1/method": "crimp",
  };
  expect(placeOf(members)).toEqual({
    parts: [{ id: "cupboard" }, { id: "main", board: "cu" }, { id: "lid" }, { id: "j1" }],
  });
});
