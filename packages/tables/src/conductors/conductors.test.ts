import { isKnown, TERM } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import {
  ARMOUR,
  armourResistance,
  conductorResistance,
  cpcHotFactor,
  IMPERIAL_STRANDINGS,
  lineHotFactor,
  RESISTANCES,
  temperatureFactor,
} from "./index.ts";

const copper = (size: number) => conductorResistance(TERM.conductorPerMetre, size, "copper").value * 1000;

describe("conductor resistance", () => {
  test.each([
    [1, 18.1],
    [1.5, 12.1],
    [2.5, 7.41],
    [4, 4.61],
    [6, 3.08],
    [10, 1.83],
    [16, 1.15],
    [25, 0.727],
    [35, 0.524],
  ])("copper of %d mm² has %d mΩ/m", (size, milliohm) => {
    expect(copper(size)).toBeCloseTo(milliohm, 12);
  });

  /** Sums printed in a handbook appendix on cable data, mΩ/m. */
  test.each([
    [1.5, 1, 30.2],
    [1.5, 1.5, 24.2],
    [2.5, 1.5, 19.51],
    [2.5, 2.5, 14.82],
    [4, 1.5, 16.71],
    [4, 4, 9.22],
    [6, 2.5, 10.49],
    [6, 6, 6.16],
    [10, 4, 6.44],
    [10, 10, 3.66],
    [16, 6, 4.23],
    [16, 16, 2.3],
    [25, 25, 1.454],
    [35, 35, 1.048],
  ])("R1+R2 of %d/%d mm² is the printed %d mΩ/m", (line, cpc, sum) => {
    expect(copper(line) + copper(cpc)).toBeCloseTo(sum, 9);
  });

  test("falls with size, and aluminium lies above copper", () => {
    for (let i = 1; i < RESISTANCES.length; i++) {
      const [before, row] = [RESISTANCES[i - 1], RESISTANCES[i]];
      if (before === undefined || row === undefined) throw new Error("row missing");
      for (const column of [1, 2, 3] as const) expect(row[column]).toBeLessThan(before[column]);
      if (row[4] !== null) expect(row[4]).toBeGreaterThan(row[2]);
    }
  });

  test("size times resistance stays near that of copper, 17.24 Ω·mm²/km and a little more", () => {
    for (const [size, , stranded] of RESISTANCES) {
      expect(size * stranded).toBeGreaterThan(17.2);
      expect(size * stranded).toBeLessThan(19.4);
    }
  });

  test("sizes between the standard ones are not tabulated", () => {
    for (const size of [2, 2.51, 0, -1, Number.NaN])
      expect(isKnown(conductorResistance(TERM.conductorPerMetre, size, "copper"))).toBe(false);
    expect(isKnown(conductorResistance(TERM.conductorPerMetre, 2.5, "aluminium"))).toBe(false);
  });

  test("armour falls with cores and size, and old strandings follow their area", () => {
    expect(armourResistance(2.5, 3).value * 1000).toBeCloseTo(8.2, 12);
    expect(isKnown(armourResistance(50, 3))).toBe(false);
    for (const { cores } of ARMOUR)
      for (let i = 1; i < cores.length; i++) expect(cores[i] as number).toBeLessThan(cores[i - 1] as number);
    for (const { area, milliohmPerMetre } of IMPERIAL_STRANDINGS)
      expect(Math.abs((17.241 / area) * 1.02 - milliohmPerMetre)).toBeLessThan(0.09);
  });
});

describe("temperature", () => {
  /** Multipliers of a reading to 20 °C, IEC 60228 correction factors. */
  test.each([
    [5, 1.064],
    [10, 1.042],
    [15, 1.02],
    [25, 0.98],
    [30, 0.962],
    [70, 0.833],
    [90, 0.781],
  ])("at %i °C the inverse is the published %d", (celsius, published) => {
    expect(Math.abs(1 / temperatureFactor(celsius).value - published)).toBeLessThanOrEqual(0.0006);
  });

  test("operating factors are 1.20 and 1.28, and 1.04 for a separate protective conductor", () => {
    expect(lineHotFactor("70C-thermoplastic").value).toBeCloseTo(1.2, 12);
    expect(lineHotFactor("90C-thermosetting").value).toBeCloseTo(1.28, 12);
    expect(cpcHotFactor("70C-thermoplastic", "separate").value).toBeCloseTo(1.04, 12);
    expect(cpcHotFactor("70C-thermoplastic", "in-cable").value).toBeCloseTo(1.2, 12);
    expect(isKnown(cpcHotFactor("70C-thermoplastic", "armour"))).toBe(false);
  });

  test("the simplified law stays within 0.5 % of copper's 234.5 law at operating temperatures", () => {
    for (const celsius of [0, 20, 70, 90])
      expect(Math.abs(temperatureFactor(celsius).value / ((234.5 + celsius) / 254.5) - 1)).toBeLessThan(0.005);
  });

  test("temperatures no conductor has are not tabulated", () => {
    for (const celsius of [-40, 200, Number.NaN]) expect(isKnown(temperatureFactor(celsius))).toBe(false);
  });
});
