import { isKnown } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import {
  cMin,
  insulationTestVoltage,
  permittedInsulation,
  permittedRcdTime,
  supplyVoltageLimits,
  typicalZe,
} from "./index.ts";

describe("RCDs, insulation and supply", () => {
  test("times by product standard", () => {
    const times = (standard: "BS EN 61008" | "BS 4293" | "BS 7288", delay: "general" | "S") => {
      const { max, min } = permittedRcdTime({ standard, delay, multiple: 1 });
      return [max.value, min?.value ?? null];
    };
    expect([
      times("BS EN 61008", "general"),
      times("BS EN 61008", "S"),
      times("BS 4293", "general"),
      times("BS 7288", "general"),
    ]).toEqual([
      [0.3, null],
      [0.5, 0.13],
      [0.2, null],
      [0.2, null],
    ]);
    expect(isKnown(permittedRcdTime({ standard: "BS 4293", delay: "S", multiple: 1 }).max)).toBe(false);
  });

  test("insulation limits and test voltages of Table 64", () => {
    expect([
      permittedInsulation("SELV/PELV").value,
      permittedInsulation("up to 500 V").value,
      permittedInsulation("above 500 V").value,
    ]).toEqual([5e5, 1e6, 1e6]);
    expect([
      insulationTestVoltage("SELV/PELV"),
      insulationTestVoltage("up to 500 V"),
      insulationTestVoltage("above 500 V"),
    ]).toEqual([250, 500, 1000]);
  });

  test("supply figures", () => {
    expect([typicalZe("TN-C-S").value, typicalZe("TN-S").value]).toEqual([0.35, 0.8]);
    expect(isKnown(typicalZe("IT"))).toBe(false);
    expect(supplyVoltageLimits.least.value).toBeCloseTo(230 * 0.94, 9);
    expect(supplyVoltageLimits.greatest.value).toBeCloseTo(230 * 1.1, 9);
    expect(230 * cMin.value).toBeCloseTo(218.5, 9);
  });
});
