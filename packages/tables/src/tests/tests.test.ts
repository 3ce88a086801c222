import { describe, expect, test } from "vitest";
import {
  bondingJointResistance,
  CONTINUITY_INSTRUMENT,
  DEAD_TESTS,
  INSULATION_CLASSES,
  insulationTestCurrent,
  insulationTestVoltage,
  insulationWorthAsking,
  LIVE_TESTS,
  POLARITY_RULES,
  permittedInsulation,
  polarityRule,
  REDUCED_INSULATION_TEST,
  ringCrossPart,
  ringEndAgreement,
  ringRatioOf25And15,
  TEST_ORDER,
} from "./index.ts";

describe("insulation", () => {
  test.each([
    ["SELV/PELV", 250, 0.5],
    ["up to 500 V", 500, 1],
    ["above 500 V", 1000, 1],
  ] as const)("%s: %i V d.c., at least %d MΩ", (circuit, volts, megohms) => {
    expect(insulationTestVoltage(circuit)).toBe(volts);
    expect(permittedInsulation(circuit)).toMatchObject({
      value: megohms * 1e6,
      detail: { source: { basis: "published" } },
    });
  });

  test("a higher voltage never asks less", () => {
    const rows = INSULATION_CLASSES.map((one) => [insulationTestVoltage(one), permittedInsulation(one).value] as const);
    for (const [volts, ohms] of rows)
      for (const [more, asked] of rows) if (more > volts) expect(asked).toBeGreaterThanOrEqual(ohms);
  });

  test("with equipment connected 250 V; that 1 MΩ stays is from memory", () => {
    expect(REDUCED_INSULATION_TEST).toMatchObject({ testVoltage: 250, source: { basis: "published" } });
    expect(REDUCED_INSULATION_TEST.least).toMatchObject({ value: 1e6, detail: { source: { basis: "memory" } } });
  });

  test("1 mA is published; 2 MΩ is a habit and above every limit", () => {
    expect(insulationTestCurrent).toMatchObject({ value: 0.001, detail: { source: { basis: "published" } } });
    expect(insulationWorthAsking).toMatchObject({ value: 2e6, detail: { source: { basis: "common-practice" } } });
    for (const one of INSULATION_CLASSES)
      expect(insulationWorthAsking.value).toBeGreaterThan(permittedInsulation(one).value);
  });
});

describe("continuity", () => {
  test("4 V to 24 V, 200 mA, 0.2 Ω to 2 Ω, 0.01 Ω", () => {
    expect(CONTINUITY_INSTRUMENT).toMatchObject({
      openCircuitVoltage: { least: 4, greatest: 24 },
      shortCircuitCurrent: 0.2,
      range: { least: 0.2, greatest: 2 },
      resolution: 0.01,
      source: { basis: "published" },
    });
  });

  test("0.05 Ω between the ends of a ring and across a joint are from memory", () => {
    for (const node of [ringEndAgreement, bondingJointResistance])
      expect(node).toMatchObject({ value: 0.05, detail: { source: { basis: "memory" } } });
  });

  test("r2 is 1.63 to 1.67 times r1 in 2.5/1.5 mm² cable", () => {
    const { value, low, high } = ringRatioOf25And15;
    expect([value, low, high].map((part) => part.toFixed(2))).toEqual(["1.63", "1.63", "1.67"]);
  });

  test("what follows from arithmetic is derived", () => {
    for (const node of [ringRatioOf25And15, ringCrossPart]) expect(node.detail.source.basis).toBe("derived");
  });

  test("a cross-connected ring reads a quarter everywhere: two halves in parallel", () => {
    for (const x of [0, 0.2, 0.5, 0.9]) {
      // Line out by x of the ring and the rest, both conductors alike with 1 Ω end to end, crossed at the board.
      const [oneWay, otherWay] = [x + (1 - x), 1 - x + x];
      expect((oneWay * otherWay) / (oneWay + otherWay)).toBeCloseTo(ringCrossPart.value * 2, 12);
    }
  });
});

describe("polarity and order", () => {
  test("three rules from memory; only lampholders are left out of one", () => {
    expect(POLARITY_RULES.map((rule) => polarityRule(rule).source.basis)).toEqual(["memory", "memory", "memory"]);
    expect(POLARITY_RULES.filter((rule) => polarityRule(rule).except !== null)).toEqual(["centre-contact-lampholders"]);
    expect(polarityRule("centre-contact-lampholders").except).toMatch(/E14 and E27.*BS EN 60238/);
  });

  test("protective conductors are proved first, dead tests and live tests have nothing in common", () => {
    expect([DEAD_TESTS[0], LIVE_TESTS[0]]).toEqual(["protective-conductor-continuity", "supply-polarity"]);
    const every = [...TEST_ORDER.dead, ...TEST_ORDER.live];
    expect(every).toHaveLength(12);
    expect(new Set(every).size).toBe(12);
    expect(DEAD_TESTS.indexOf("insulation-resistance")).toBeLessThan(DEAD_TESTS.indexOf("polarity"));
    expect(LIVE_TESTS.indexOf("earth-fault-loop-impedance")).toBeLessThan(LIVE_TESTS.indexOf("rcd"));
    expect(TEST_ORDER.source.basis).toBe("published");
  });
});
