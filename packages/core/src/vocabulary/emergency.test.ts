import { expect, test } from "vitest";
import { networkEmergencyNumber } from "./emergency.ts";
import { NATIONS } from "./premises.ts";

test("105 serves Great Britain; elsewhere, and where the nation is not known, there is no such number", () => {
  expect(NATIONS.map((nation) => [nation, networkEmergencyNumber(nation)])).toEqual([
    ["england", "105"],
    ["wales", "105"],
    ["scotland", "105"],
    ["northern-ireland", undefined],
  ]);
  for (const other of [undefined, "", "England", "isle-of-man", "toString"])
    expect(networkEmergencyNumber(other)).toBeUndefined();
});
