import { describe, expect, test } from "vitest";
import { printQuantity } from "./print.ts";

describe("printQuantity", () => {
  test.each([
    [1.28, "ohm", "1.28 Ω"],
    [999e6, "ohm", "999 MΩ"],
    [0.0303, "second", "30.3 ms"],
    [0.4, "second", "400 ms"],
    [5, "second", "5.00 s"],
    [3833.33, "ampere", "3.83 kA"],
    [0.03, "ampere", "30.0 mA"],
    [0.00741, "ohm-per-metre", "7.41 mΩ/m"],
    [0, "volt", "0 V"],
    [-5, "celsius", "−5.00 °C"],
    [Number.POSITIVE_INFINITY, "ohm", "no upper limit"],
    [1.2, "ratio", "1.20"],
  ] as const)("%d %s prints as %s", (value, unit, text) => {
    expect(printQuantity(value, unit)).toBe(text);
  });
});
