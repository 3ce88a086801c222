import { isKnown } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import {
  delayedRcdTime,
  electrodeStability,
  nonOperatingMultiple,
  permittedRa,
  permittedRaAt25V,
  permittedRcdTime,
  permittedTouchVoltage,
  rcdTestCurrent,
  reducedTouchVoltage,
  standingLeakagePart,
  trippingRange,
} from "./index.ts";

describe("operating times", () => {
  /** Milliseconds at 1, 2 and 5 times IΔn as the contractor-body article and the testers' manuals print them. */
  test.each([
    ["BS EN 61008", "general", [300, 150, 40], [null, null, null]],
    ["BS EN 61009", "general", [300, 150, 40], [null, null, null]],
    ["BS EN 62423", "general", [300, 150, 40], [null, null, null]],
    ["BS EN 61008", "S", [500, 200, 150], [130, null, 50]],
    ["BS EN 61009", "S", [500, 200, 150], [130, null, 50]],
    ["BS EN 62423", "S", [500, 200, 150], [130, null, 50]],
    ["BS 4293", "general", [200, null, 40], [null, null, null]],
    ["BS 7288", "general", [200, null, 40], [null, null, null]],
    ["BS 4293", "S", [null, null, null], [null, null, null]],
    ["BS 7288", "S", [null, null, null], [null, null, null]],
    ["BS EN 60947-2", "general", [null, null, null], [null, null, null]],
    ["BS EN 60947-2", "S", [null, null, null], [null, null, null]],
  ] as const)("%s %s", (standard, delay, longest, shortest) => {
    for (const [i, multiple] of ([1, 2, 5] as const).entries()) {
      const { max, min } = permittedRcdTime({ standard, delay, multiple });
      expect(isKnown(max) ? Math.round(max.value * 1000) : null).toBe(longest[i]);
      if (max.kind === "published") expect(max.detail.source.basis).toBe("published");
      expect(min === null ? null : Math.round(min.value * 1000)).toBe(shortest[i]);
    }
  });

  test("a delayed BS 4293 device: 0.5 s marked gives 450 to 700 ms at IΔn and 290 to 540 ms at five times", () => {
    const once = delayedRcdTime(0.5, 1);
    expect([once.min?.value, once.max.value]).toEqual([0.45, 0.7]);
    const five = delayedRcdTime(0.5, 5);
    expect(five.min?.value).toBeCloseTo(0.29, 12);
    expect(five.max.value).toBeCloseTo(0.54, 12);
    expect(once.max).toMatchObject({ detail: { source: { basis: "derived", formula: expect.any(String) } } });
  });

  test("without a marked delay there are no limits for it", () => {
    for (const delay of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      const { max, min } = delayedRcdTime(delay, 1);
      expect([isKnown(max), min]).toEqual([false, null]);
    }
  });

  test("at half IΔn it must not operate", () => {
    expect(nonOperatingMultiple.value).toBe(0.5);
  });
});

describe("resistance of electrode and protective conductors", () => {
  test.each([
    [0.01, 5000, 2500],
    [0.03, 1667, 833],
    [0.1, 500, 250],
    [0.3, 167, 83],
    [0.5, 100, 50],
    [1, 50, 25],
  ])("IΔn %d A: %i Ω at 50 V, %i Ω at 25 V, within half an ohm of UL ÷ IΔn", (residual, at50, at25) => {
    expect([permittedRa(residual).value, permittedRaAt25V(residual).value]).toEqual([at50, at25]);
    expect(Math.abs(at50 - 50 / residual)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(at25 - 25 / residual)).toBeLessThanOrEqual(0.5);
    for (const found of [permittedRa(residual), permittedRaAt25V(residual)])
      expect(found).toMatchObject({ detail: { source: { basis: "published" } } });
    expect(permittedRa(residual)).toBe(permittedRa(residual));
  });

  test("ratings without a row are reckoned, and say so", () => {
    expect(permittedRa(0.2)).toMatchObject({
      value: 250,
      detail: { row: "IΔn 0.2 A, 50 V", source: { basis: "derived" } },
    });
    expect(permittedRaAt25V(0.2)).toMatchObject({ value: 125, detail: { row: "IΔn 0.2 A, 25 V" } });
    expect(permittedRa(0.2)).toBe(permittedRa(0.2));
    for (const residual of [0, -0.03, Number.NaN, Number.POSITIVE_INFINITY])
      expect(isKnown(permittedRa(residual))).toBe(false);
  });

  test("touch voltages and the stability of an electrode", () => {
    expect([permittedTouchVoltage, reducedTouchVoltage]).toMatchObject([
      { value: 50, detail: { source: { basis: "published" } } },
      { value: 25, detail: { source: { basis: "published", doubt: expect.any(String) } } },
    ]);
    expect(electrodeStability).toMatchObject({ value: 200, detail: { source: { basis: "memory" } } });
  });
});

describe("currents", () => {
  test.each([
    ["AC", 0.03],
    ["A", 0.042],
    ["F", 0.042],
    ["B", 0.06],
  ] as const)("type %s of 30 mA is tested with %d A, and no other rating is tabulated", (type, amperes) => {
    expect(rcdTestCurrent(type, 0.03)).toMatchObject({ value: amperes, detail: { source: { basis: "published" } } });
    for (const residual of [0.01, 0.1, 0.3, Number.NaN]) expect(isKnown(rcdTestCurrent(type, residual))).toBe(false);
  });

  test.each([
    ["AC", 0.03, 0.5, 1],
    ["A", 0.0105, 0.35, 1.4],
    ["A", 0.03, 0.35, 1.4],
    ["A", 0.01, 0.35, 2],
    ["A", 0.006, 0.35, 2],
    ["B", 0.3, 0.5, 2],
  ] as const)("type %s, IΔn %d A operates from %d to %d times", (type, residual, least, greatest) => {
    expect(trippingRange(type, residual)).toMatchObject({ least: { value: least }, greatest: { value: greatest } });
  });

  test("type F, and no rating, have no range", () => {
    for (const found of [trippingRange("F", 0.03), trippingRange("A", 0), trippingRange("AC", Number.NaN)])
      expect(found).toMatchObject({ kind: "not-known", detail: { silence: "not-tabulated" } });
  });

  test("standing current at most 30 % of IΔn, from memory: 9 mA for 30 mA", () => {
    expect(standingLeakagePart.value * 30).toBeCloseTo(9, 12);
    expect(standingLeakagePart).toMatchObject({ detail: { source: { basis: "memory" } } });
  });
});
