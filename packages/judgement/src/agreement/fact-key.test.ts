import { describe, expect, test } from "vitest";
import { type FactValue, factKey } from "./fact-key.ts";
import { personKey } from "./person-key.ts";

const limited = { notKnown: "limited", reason: "locked" } as const;
const notVerified = { notKnown: "not-verified", reason: "no time" } as const;
const notApplicable = { notKnown: "not-applicable", reason: "no bath" } as const;

describe("two facts say the same", () => {
  test.each<readonly [FactValue, FactValue]>([
    ["17.5 mm", "1.75 cm"],
    ["1.75cm", "0.0175 m"],
    ["0.3 cm", "3 mm"],
    ["200 MΩ", "0.2 GΩ"],
    ["200 Mohm", "200000 kΩ"],
    ["> 999 MΩ", ">999 MΩ"],
    ["2.50 mm²", "2.5 mm2"],
    ["50 %", "0.5"],
    ["-0 °C", "0 °C"],
    ["10 mm to 2 cm", "1 cm..20 mm"],
    ["copper | aluminium", "aluminium|copper"],
    ["Plastic  box", "plastic box"],
    ["yes", true],
    ["No", false],
    [limited, notVerified],
    ["café", "cafe\u0301"],
  ])("%j and %j", (a, b) => expect(factKey(a)).toBe(factKey(b)));
});

describe("two facts say different things", () => {
  test.each<readonly [FactValue, FactValue]>([
    ["17.5 mm", "17.5 m"],
    ["1 mm", "1 mm²"],
    ["> 1 MΩ", "1 MΩ"],
    ["<1 cm", ">1 cm"],
    ["5 mW", "5 MW"],
    ["10 mm to 20 mm", "10 mm"],
    [false, limited],
    [limited, notApplicable],
    ["not-known", limited],
    ["does-not-apply", notApplicable],
    [true, false],
    ["copper", "copper | aluminium"],
  ])("%j and %j", (a, b) => expect(factKey(a)).not.toBe(factKey(b)));
});

test("persons are matched by name whatever the letter case and spacing, and not by more", () => {
  expect(personKey(" ANN  Example")).toBe(personKey("Ann Example "));
  expect(personKey("Straße")).toBe(personKey("STRASSE"));
  expect(personKey("A. Example")).not.toBe(personKey("Ann Example"));
});
