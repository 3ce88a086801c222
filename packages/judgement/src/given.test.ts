import { matter, TERM } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { givenFromText } from "./given.ts";
import { asksQuantities, asksQuantity, asksWord, asksYesNo } from "./need.ts";

const needs = {
  zs: asksQuantity(TERM.measuredZs),
  points: asksQuantities(TERM.ringCrossLineNeutral),
  system: asksWord(matter("system", "system"), ["TN-S", "TT"]),
  rcd: asksYesNo(matter("rcd", "RCD")),
};

describe("givenFromText", () => {
  test("turns text with units into evidence and leaves out nothing", () => {
    const made = givenFromText(needs, { zs: "1.20 Ω", points: ["0.22 Ω", "220 mΩ"], system: "TT", rcd: "yes" });
    if (!made.ok) throw new Error("refused");
    expect(made.given.zs).toMatchObject({ kind: "seen", value: 1.2 });
    expect(made.given.points.map((one) => one.value)).toEqual([0.22, 0.22]);
    expect(made.given.system).toMatchObject({ kind: "fact", word: "TT" });
    expect(made.given.rcd).toMatchObject({ kind: "fact", word: true });
  });

  test("a need that is not given is not known", () => {
    const made = givenFromText(needs, {});
    if (!made.ok) throw new Error("refused");
    expect(made.given.zs.kind).toBe("not-known");
    expect(made.given.system.kind).toBe("fact-not-known");
    expect(made.given.points).toEqual([]);
  });

  test("reads a range either way round", () => {
    const made = givenFromText(needs, { zs: "1.4 Ω to 1.2 Ω" });
    if (!made.ok) throw new Error("refused");
    expect(made.given.zs).toMatchObject({ low: 1.2, high: 1.4 });
  });

  test("reports every problem at once, each with its name", () => {
    const made = givenFromText(needs, { zs: "32 A", system: "TNS", rcd: "maybe", zdb: "1 Ω", __proto__x: "1" });
    if (made.ok) throw new Error("accepted");
    expect(made.issues.map((issue) => [issue.code, issue.path[0]])).toEqual(
      expect.arrayContaining([
        ["unit-mismatch", "zs"],
        ["not-in-list", "system"],
        ["not-in-list", "rcd"],
        ["unknown-need", "zdb"],
        ["unknown-need", "__proto__x"],
      ]),
    );
  });

  test("refuses a magnitude below zero, and takes a temperature that is", () => {
    const made = givenFromText({ ...needs, at: asksQuantity(TERM.testTemperature) }, { zs: "-1.2 Ω", at: "-4 °C" });
    expect(made).toMatchObject({ ok: false, issues: [{ code: "negative", path: ["zs"], found: "-1.2 Ω" }] });
    expect(made).toHaveProperty("issues.length", 1);
  });

  test("refuses a single value given twice", () => {
    const made = givenFromText(needs, { zs: ["1 Ω", "2 Ω"] });
    expect(made).toMatchObject({ ok: false, issues: [{ code: "given-twice", path: ["zs"] }] });
  });
});
