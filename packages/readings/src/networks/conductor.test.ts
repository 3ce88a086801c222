import {
  fact,
  factNotKnown,
  isKnown,
  notKnown,
  parseWritten,
  Reckoner,
  seen,
  seenBetween,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { expect, test } from "vitest";
import { conductorOhms } from "./index.ts";

const reckon = new Reckoner(true);
const written = (text: string, unit: "square-millimetre" | "celsius" | "metre") => {
  const read = parseWritten(text, unit);
  if ("code" in read) throw new Error(text);
  return read as never;
};
const run = {
  size: seen(TERM.lineArea, written("2.5 mm²", "square-millimetre"), []),
  material: fact<"copper">(MATTER.material, "copper", []),
  length: seen(TERM.length, written("60 m", "metre"), []),
  temperature: seen(TERM.testTemperature, written("20 °C", "celsius"), []),
};

test("60 m of 2.5 mm² copper at 20 °C: 7.41 mΩ/m × 60 m, from 8 % below the greatest up to it", () => {
  const found = conductorOhms(run, reckon);
  expect(found.high).toBeCloseTo(0.4446, 9);
  expect(found.low).toBeCloseTo(0.4446 * 0.92, 9);
});

test("an unknown length is a range of resistance, an unknown temperature widens it", () => {
  const ranged = conductorOhms(
    { ...run, length: seenBetween(TERM.length, 50 as never, 70 as never, "50 m to 70 m", []) },
    reckon,
  );
  expect(ranged.high).toBeCloseTo(0.5187, 9);
  expect(ranged.low).toBeCloseTo(0.3705 * 0.92, 9);
  const cold = conductorOhms({ ...run, temperature: notKnown(TERM.testTemperature, []) }, reckon);
  expect(cold.high).toBeCloseTo(0.4446 * 1.04, 9);
});

test("without size, material or length there is no resistance", () => {
  expect(isKnown(conductorOhms({ ...run, size: notKnown(TERM.lineArea, []) }, reckon))).toBe(false);
  expect(isKnown(conductorOhms({ ...run, material: factNotKnown(MATTER.material, []) }, reckon))).toBe(false);
  expect(isKnown(conductorOhms({ ...run, length: notKnown(TERM.length, []) }, reckon))).toBe(false);
});
