import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SCALES } from "./unit.ts";
import { isFault, parseWritten } from "./written.ts";

const value = (text: string, unit: Parameters<typeof parseWritten>[1]) => {
  const result = parseWritten(text, unit);
  if (isFault(result)) throw new Error(`${text} is a fault: ${result.code}`);
  return result;
};

describe("parseWritten", () => {
  test("keeps the decimal as written, not a product of rounded numbers", () => {
    expect(value("0.35 Ω", "ohm").value).toBe(0.35);
    expect(value("30.3 ms", "second").value).toBe(0.0303);
    expect(value("1.1 kA", "ampere").value).toBe(1100);
    expect(value("0.1 MΩ", "ohm").value).toBe(100_000);
    expect(value("7.41 mΩ/m", "ohm-per-metre").value).toBe(0.00741);
  });

  test("tells the resolution of the display", () => {
    expect(value("0.35 Ω", "ohm").resolution).toBe(0.01);
    expect(value("200 MΩ", "ohm").resolution).toBe(1e6);
    expect(value("0.350 kΩ", "ohm").resolution).toBe(1);
  });

  test("reads the end of a range as a bound", () => {
    expect(value(">999 MΩ", "ohm")).toMatchObject({ value: 999e6, bound: "above" });
    expect(value("<0.05 Ω", "ohm")).toMatchObject({ value: 0.05, bound: "below" });
    expect(value("> 200 MΩ", "ohm").bound).toBe("above");
  });

  test("accepts what a plain keyboard can type", () => {
    expect(value("1.20ohm", "ohm").value).toBe(1.2);
    expect(value("2.5 mm2", "square-millimetre").value).toBe(2.5);
    expect(value("5 %", "ratio").value).toBe(0.05);
    expect(value("3", "ratio").value).toBe(3);
  });

  test.each([
    ["0,35 Ω", "not-a-quantity"],
    ["1e308 Ω", "not-a-quantity"],
    ["NaN Ω", "not-a-quantity"],
    ["Infinity", "not-a-quantity"],
    ["", "not-a-quantity"],
    ["0.35", "unknown-unit"],
    ["0.35 ohmz", "unknown-unit"],
    ["32 A", "unit-mismatch"],
    ["1 __proto__", "unknown-unit"],
    ["9".repeat(400), "not-a-quantity"],
  ])("refuses %j as a resistance: %s", (text, code) => {
    expect(parseWritten(text, "ohm")).toMatchObject({ code });
  });

  test("never throws and never gives a value that is not finite, whatever the text", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: "binary" }), fc.stringMatching(/^[<>]?[\d.e+-]{0,20} ?[ΩmkMA]{0,4}$/)),
        (text) => {
          const result = parseWritten(text, "ohm");
          if (!isFault(result)) expect(Number.isFinite(result.value) && result.resolution > 0).toBe(true);
        },
      ),
    );
  });

  test("equals the decimal arithmetic of digits and scale for every written unit", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SCALES.values()),
        fc.integer({ min: 0, max: 999_999 }),
        fc.integer({ min: 0, max: 4 }),
        (scale, whole, decimals) => {
          const digits = decimals === 0 ? String(whole) : (whole / 10 ** decimals).toFixed(decimals);
          const result = value(`${digits} ${scale.symbol}`, scale.unit);
          expect(result.value).toBe(Number(`${whole}e${scale.exponent - decimals}`));
        },
      ),
    );
  });
});
