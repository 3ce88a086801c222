import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  DECISION_RULES,
  DECISION_TERMS,
  INSTRUMENT_PARTS,
  INSTRUMENT_QUANTITIES,
  LOWEST_USABLE_READING,
  lowestUsableReading,
  operatingUncertainty,
  RATED_OPERATING_CONDITIONS,
} from "./index.ts";

describe("operating uncertainty", () => {
  test.each([
    ["insulation", 2, 70, 130, "memory"],
    ["loop", 3, 70, 130, "memory"],
    ["continuity", 4, 70, 130, "published"],
    ["electrode", 5, 70, 130, "memory"],
    ["rcd-test-current", 6, 100, 110, "published"],
    ["rcd-half-test-current", 6, 90, 100, "published"],
    ["rcd-time", 6, 90, 110, "memory"],
    ["rcd-current", 6, 90, 110, "memory"],
    ["touch-voltage", 6, 100, 120, "memory"],
  ] as const)("%s, part %i: %i %% to %i %%", (quantity, part, least, greatest, basis) => {
    const found = operatingUncertainty(quantity);
    expect([found.low, found.value, found.high].map((one) => Math.round(one * 1e6))).toEqual([
      least * 1e4,
      1e6,
      greatest * 1e4,
    ]);
    expect(found).toMatchObject({ detail: { source: { basis, work: `BS EN 61557-${part}` } } });
  });

  test("parts without a figure have none, and every quantity has one row", () => {
    for (const [quantity, part] of [
      ["phase-sequence", 7],
      ["combined", 10],
    ] as const)
      expect(operatingUncertainty(quantity)).toMatchObject({
        kind: "not-known",
        detail: { silence: "not-tabulated", reason: expect.stringContaining(`part ${part}`) },
      });
    for (const { part, source } of INSTRUMENT_PARTS) expect(source.work).toBe(`BS EN 61557-${part}`);
    expect(INSTRUMENT_PARTS.map(({ part }) => part)).toEqual([2, 3, 4, 5, 6, 6, 6, 6, 6, 7, 10]);
    expect(INSTRUMENT_PARTS.map(({ quantity }) => quantity).sort()).toEqual([...INSTRUMENT_QUANTITIES].sort());
  });

  test("the 30 % of parts whose text was not read is in doubt", () => {
    for (const quantity of ["insulation", "loop", "electrode"] as const)
      expect(operatingUncertainty(quantity)).toMatchObject({
        detail: { source: { doubt: expect.stringContaining("30 %") } },
      });
  });

  test("it holds from 0 to 35 °C, 90° either way, 85 to 110 % of supply", () => {
    expect(RATED_OPERATING_CONDITIONS).toMatchObject({
      temperature: { least: 0, greatest: 35 },
      tilt: 90,
      supply: { least: 0.85, greatest: 1.1 },
      source: { basis: "published", work: "BS EN 61557-1" },
    });
  });
});

describe("lowest usable reading", () => {
  const of = (ofReading: number, digits: number, resolution: number) =>
    lowestUsableReading({ text: "", ofReading, digits }, resolution);

  test("±(5 % + 5 digits) of 0.01 Ω: 0.05 ÷ 0.25 = 0.20 Ω; ±(10 % + 15 digits): 0.15 ÷ 0.20 = 0.75 Ω", () => {
    expect(of(0.05, 5, 0.01)).toBeCloseTo(0.2, 12);
    expect(of(0.1, 15, 0.01)).toBeCloseTo(0.75, 12);
    // Makers mark 0.32 Ω and 0.85 Ω for the two, with the influences added.
    expect(of(0.05, 5, 0.01)).toBeLessThan(0.32);
    expect(of(0.1, 15, 0.01)).toBeLessThan(0.85);
    expect(LOWEST_USABLE_READING).toMatchObject({ basis: "derived", doubt: expect.stringContaining("makers") });
  });

  test("at that reading the stated accuracy is exactly 30 % of it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.29, noNaN: true }),
        fc.integer({ min: 1, max: 99 }),
        fc.constantFrom(0.001, 0.01, 0.1, 1),
        (ofReading, digits, resolution) => {
          const reading = of(ofReading, digits, resolution) ?? Number.NaN;
          expect((ofReading * reading + digits * resolution) / reading).toBeCloseTo(0.3, 9);
        },
      ),
    );
  });

  test("no reading is good enough at 30 % and more, nor without a resolution", () => {
    for (const [a, resolution] of [
      [0.3, 0.01],
      [0.5, 0.01],
      [Number.NaN, 0.01],
      [-0.1, 0.01],
      [0.05, 0],
      [0.05, -0.01],
      [0.05, Number.NaN],
      [0.05, Number.POSITIVE_INFINITY],
    ] as const)
      expect(of(a, 3, resolution)).toBeUndefined();
    expect(of(0.02, 0, 0.01)).toBe(0);
  });
});

test("each decision term is explained once and was read", () => {
  expect(DECISION_RULES.map(({ term }) => term)).toEqual(DECISION_TERMS);
  for (const { means, source } of DECISION_RULES)
    expect([means.length > 10, source.basis]).toEqual([true, "published"]);
});
