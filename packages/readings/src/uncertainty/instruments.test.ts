import type { InspectionFile } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { instrumentTableOf, LEADS_LEFT, NO_INSTRUMENTS } from "./instruments.ts";

const at = (hour: number) => `2026-10-20T${String(hour).padStart(2, "0")}:00:00+01:00`;

function table(leadsNulled?: InspectionFile["instruments"][number]["leadsNulled"]) {
  const instruments = [{ id: "mft", kind: "tester", serial: "1", leadsNulled }];
  return instrumentTableOf({ instruments: instruments as unknown as InspectionFile["instruments"] });
}

describe("what nulling left of the leads", () => {
  const nulled = table([{ at: at(13), showed: "0.03 Ω" }, { at: at(9) }, { at: at(16), showed: "0.00 Ω" }]);

  test("what had crept in stands for the readings since the nulling before", () => {
    // 0.03 Ω and half the last digit.
    const close = (half: number) => ({ half: expect.closeTo(half, 12), recorded: true });
    expect(nulled.leadsOf("mft", at(10))).toMatchObject(close(0.035));
    expect(nulled.leadsOf("mft", at(14))).toMatchObject(close(0.005));
  });

  test("readings before the first nulling, after the last, or without a time rest on an assumption", () => {
    for (const one of [nulled.leadsOf("mft", at(8)), nulled.leadsOf("mft", at(17)), nulled.leadsOf("mft", undefined)])
      expect(one).toMatchObject({ half: LEADS_LEFT, recorded: false });
  });

  test("readings share an error exactly where no nulling lies between them", () => {
    const key = (hour: number) => nulled.leadsOf("mft", at(hour)).key;
    expect(key(10)).toBe(key(12));
    expect(key(12)).not.toBe(key(14));
    expect(table().leadsOf("mft", at(9)).key).toBe(table().leadsOf("mft", undefined).key);
    expect(NO_INSTRUMENTS.leadsOf("a", undefined).key).not.toBe(NO_INSTRUMENTS.leadsOf("b", undefined).key);
  });

  test("a split that is no part of one is refused", () => {
    for (const part of [-0.1, 1.1, Number.NaN])
      expect(() => instrumentTableOf({ instruments: [] }, part)).toThrow(RangeError);
  });
});
