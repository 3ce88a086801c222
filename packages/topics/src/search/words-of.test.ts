import { describe, expect, test } from "vitest";
import { plainWords } from "./words-of.ts";

describe("a size, a rating or a power is one word however its unit is written", () => {
  test.each([
    ["6 mil on a 45 amp", ["6mm", "on", "a", "45a"]],
    ["6mm on a 45A", ["6mm", "on", "a", "45a"]],
    ["2.5 mm2", ["2.5mm"]],
    ["10 kW shower", ["10kw", "shower"]],
    ["9.5kw shower", ["9.5kw", "shower"]],
    ["3 ample boards", ["3", "ample", "boards"]],
  ])("%s", (typed, words) => {
    expect(plainWords(typed)).toEqual(words);
  });
});

describe("a number of volts that no supply ought to have is high or low", () => {
  test.each([
    ["265 volts at the intake", ["265", "volts", "voltage", "high", "at", "the", "intake"]],
    ["253.4v", ["253.4v", "voltage", "high"]],
    ["207 V", ["207", "v", "voltage", "low"]],
    ["230v light", ["230v", "light"]],
    ["253 v", ["253", "v"]],
    ["110 volts", ["110", "volts"]],
    ["216.2 v", ["216.2", "v"]],
  ])("%s", (typed, words) => {
    expect(plainWords(typed)).toEqual(words);
  });
});
