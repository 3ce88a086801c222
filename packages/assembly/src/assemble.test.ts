import { readFileSync } from "node:fs";
import { parseInspection } from "@good-grounds/inspection";
import { expect, test } from "vitest";
import { assemble } from "./assemble.ts";

const HOUSE = readFileSync(new URL("../../../examples/terraced-house.json", import.meta.url), "utf8");

/** The fault current drawn for the first circuit in doubt, where the file states this nominal voltage. */
function faultCurrent(nominalVoltage: unknown) {
  const file = JSON.parse(HOUSE);
  file.supply.nominalVoltage = nominalVoltage;
  file.boards[0].circuits[4].readings.zs.shown = "9.00 Ω";
  const parsed = parseInspection(JSON.stringify(file));
  if (!parsed.ok) throw new Error("refused");
  return assemble(parsed.file).curves[0]?.faultCurrent;
}

test("the fault current of a drawing follows the nominal voltage of the file, and is open where that is", () => {
  const [low = 0, high = 0] = faultCurrent("230 V") ?? [];
  expect(low).toBeGreaterThan(0);
  expect(high).toBeGreaterThan(low);
  const [otherLow = 0, otherHigh = 0] = faultCurrent("240 V") ?? [];
  expect(otherLow).toBeCloseTo((low * 240) / 230, 9);
  expect(otherHigh).toBeCloseTo((high * 240) / 230, 9);
  expect(faultCurrent({ notKnown: "limited", reason: "no test" })).toBeNull();
});
