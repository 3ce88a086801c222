import { describe, expect, test } from "vitest";
import { nullingsOf } from "./nullings.ts";

const at = (hour: number) => `2026-10-20T${String(hour).padStart(2, "0")}:00:00+01:00`;

describe("what nulling left of the leads", () => {
  const leadsAt = nullingsOf([{ at: at(13), showed: "0.03 Ω" }, { at: at(9) }, { at: at(16), showed: "0.00 Ω" }]);

  test("what had crept in stands for the readings since the nulling before", () => {
    // 0.03 Ω and half the last digit.
    expect(leadsAt(at(10))?.half).toBeCloseTo(0.035, 12);
    expect(leadsAt(at(14))?.half).toBeCloseTo(0.005, 12);
  });

  test("readings before the first nulling, after the last, or without a time have no figure", () => {
    for (const moment of [at(8), at(17), undefined]) expect(leadsAt(moment)?.half).toBeUndefined();
    expect(nullingsOf([])(at(9))).toBeUndefined();
  });

  test("readings share an error exactly where no nulling lies between them", () => {
    expect(leadsAt(at(10))?.since).toBe(leadsAt(at(12))?.since);
    expect(leadsAt(at(12))?.since).not.toBe(leadsAt(at(14))?.since);
    expect(leadsAt(at(8))?.since).not.toBe(leadsAt(undefined)?.since);
  });
});
