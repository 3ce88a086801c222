import { INSULATIONS, isKnown, TERM } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import {
  ARMOUR,
  armourResistance,
  conductorResistance,
  cpcHotFactor,
  FLAT_TWIN_CPC,
  flatTwinCpcArea,
  IMPERIAL_STRANDINGS,
  lineHotFactor,
  operatingTemperature,
  RESISTANCES,
  temperatureFactor,
} from "./index.ts";

const copper = (size: number) => conductorResistance(TERM.conductorPerMetre, size, "copper").value * 1000;

describe("conductor resistance", () => {
  /** Copied out apart from the rows under test: size, copper class 1, 2 and 5, aluminium, in mΩ/m. */
  const COPIED = `
    0.5    36     36     39     -
    0.75   24.5   24.5   26     -
    1      18.1   18.1   19.5   -
    1.5    12.1   12.1   13.3   -
    2.5    7.41   7.41   7.98   -
    4      4.61   4.61   4.95   -
    6      3.08   3.08   3.3    -
    10     1.83   1.83   1.91   3.08
    16     1.15   1.15   1.21   1.91
    25     0.727  0.727  0.78   1.2
    35     0.524  0.524  0.554  0.868
    50     0.387  0.387  0.386  0.641
    70     0.268  0.268  0.272  0.443
    95     0.193  0.193  0.206  0.32
    120    0.153  0.153  0.161  0.253
    150    0.124  0.124  0.129  0.206
    185    0.101  0.0991 0.106  0.164
    240    0.0775 0.0754 0.0801 0.125
    300    0.062  0.0601 0.0641 0.1
  `
    .trim()
    .split("\n")
    .map((line) => line.trim().split(/ +/));

  test("every printed figure is carried, and answered to the last bit in Ω/m", () => {
    expect(RESISTANCES.map((row) => row.map((cell) => (cell === null ? "-" : String(cell))))).toEqual(COPIED);
    const ohms = (printed: string | undefined) => (printed === "-" ? Number.NaN : Number(`${printed}e-3`));
    for (const [size, , stranded, flexible, aluminium] of COPIED) {
      const area = Number(size);
      for (const term of [TERM.conductorPerMetre, TERM.linePerMetre, TERM.cpcPerMetre]) {
        expect(conductorResistance(term, area, "copper").value).toBe(ohms(stranded));
        expect(conductorResistance(term, area, "copper", true).value).toBe(ohms(flexible));
        expect(conductorResistance(term, area, "aluminium").value).toBe(ohms(aluminium));
        expect(conductorResistance(term, area, "copper").term).toBe(term);
      }
    }
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

  test("r2 ÷ r1 of 2.5 and 1.5 mm² is 1.633; the 1.67 often quoted is the ratio of the sizes", () => {
    expect(copper(1.5) / copper(2.5)).toBeCloseTo(1.633, 3);
    expect(2.5 / 1.5).toBeCloseTo(1.67, 2);
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
    for (const size of [2, 2.51, 0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(isKnown(conductorResistance(TERM.conductorPerMetre, size, "copper"))).toBe(false);
    expect(conductorResistance(TERM.linePerMetre, 2.5, "aluminium")).toMatchObject({
      kind: "not-known",
      term: TERM.linePerMetre,
      detail: { silence: "not-tabulated", reason: "no figure in BS EN 60228 for aluminium of 2.5 mm²" },
    });
    expect(isKnown(conductorResistance(TERM.linePerMetre, 10, "aluminium", true))).toBe(false);
    expect(isKnown(conductorResistance(TERM.linePerMetre, 1.97, "copper", true))).toBe(false);
  });

  test("pre-metric strandings are found by their area, as derived", () => {
    for (const { area, milliohmPerMetre, stranding } of IMPERIAL_STRANDINGS) {
      expect(conductorResistance(TERM.cpcPerMetre, area, "copper")).toMatchObject({
        value: Number(`${milliohmPerMetre}e-3`),
        detail: { source: { basis: "derived" }, row: `copper ${stranding} (${area} mm²)` },
      });
    }
  });

  test("areas of pre-metric strandings follow from their wires: number × π/4 × diameter², less the lay", () => {
    for (const { stranding, area } of IMPERIAL_STRANDINGS) {
      const [wires, inches] = stranding.split("/").map(Number);
      const circles = ((wires ?? Number.NaN) * Math.PI * (25.4 * (inches ?? Number.NaN)) ** 2) / 4;
      expect(Math.abs(area / circles - 1), stranding).toBeLessThan(0.01);
    }
  });

  test("the usual protective conductor of flat twin, and that there is none above 16 mm²", () => {
    const usual = [1, 1.5, 2.5, 4, 6, 10, 16].map((line) => flatTwinCpcArea(line).value);
    expect(usual).toEqual([1, 1, 1.5, 1.5, 2.5, 4, 6]);
    for (const line of [25, 2, Number.NaN]) expect(isKnown(flatTwinCpcArea(line))).toBe(false);
    expect(flatTwinCpcArea(1)).toMatchObject({ detail: { source: { basis: "memory" } } });
    for (const { line, cpc } of FLAT_TWIN_CPC) expect(cpc).toBeLessThanOrEqual(line);
  });

  test("armour falls with cores and size, and old strandings follow their area", () => {
    const armour = (size: number) => [2, 3, 4, 5].map((cores) => armourResistance(size, cores).value);
    expect([1.5, 2.5, 4, 6].map(armour)).toEqual([
      [0.0102, 0.0095, 0.0088, 0.0082],
      [0.0088, 0.0082, 0.0077, 0.0068],
      [0.0079, 0.0075, 0.0068, 0.0062],
      [0.007, 0.0067, 0.0043, 0.0039],
    ]);
    expect(isKnown(armourResistance(2.5, 6))).toBe(false);
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

  test("operating temperatures are remembered, and give the factors", () => {
    const limits = INSULATIONS.map((insulation) => operatingTemperature(insulation));
    expect(limits.map(({ value }) => value)).toEqual([70, 90, 90, 60, 70, 105]);
    for (const limit of limits) expect(limit).toMatchObject({ detail: { source: { basis: "memory" } } });
    for (const insulation of INSULATIONS) {
      const rise = operatingTemperature(insulation).value - 20;
      expect(lineHotFactor(insulation).value).toBeCloseTo(1 + rise / 250, 12);
    }
  });

  test("a factor is that of its temperature", () => {
    expect([5, 10, 15, 20, 25, 30].map((celsius) => temperatureFactor(celsius).value)).toEqual([
      0.94, 0.96, 0.98, 1, 1.02, 1.04,
    ]);
  });

  test("temperatures no conductor has are not tabulated", () => {
    for (const celsius of [-20, 110]) expect(isKnown(temperatureFactor(celsius))).toBe(true);
    for (const celsius of [-20.1, 110.1, -40, 200, Number.NaN]) expect(isKnown(temperatureFactor(celsius))).toBe(false);
  });
});
