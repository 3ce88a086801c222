import { matter, TERM } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { givenFromText } from "./given.ts";
import { asksQuantities, asksQuantity, asksReading, asksReadings, asksWord, asksYesNo } from "./need.ts";

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

  describe("what is read off an instrument", () => {
    const read = {
      zs: asksQuantity(TERM.measuredZs),
      points: asksQuantities(TERM.ringCrossLineNeutral),
      length: asksQuantity(TERM.length),
      at: asksQuantity(TERM.testTemperature),
    };
    const made = (given: Parameters<typeof givenFromText>[1]) => {
      const result = givenFromText(read, given);
      if (!result.ok) throw new Error(JSON.stringify(result.issues));
      return result.given;
    };

    test("is a reading without stated accuracy, with the last digit as typed; a length is not", () => {
      const { zs, points, length } = made({ zs: "0.71 Ω", points: ["0.220 Ω", ">99.9 Ω"], length: "12 m" });
      expect(zs).toMatchObject({
        kind: "measured",
        low: 0.71,
        high: 0.71,
        detail: { resolution: 0.01, accuracy: null },
      });
      expect(points.map(({ kind, high }) => [kind, high])).toEqual([
        ["measured", 0.22],
        ["measured", Number.POSITIVE_INFINITY],
      ]);
      expect(length.kind).toBe("seen");
    });

    test.each([
      ["0.71 ± 0.02 Ω", 0.69, 0.73],
      ["0.71 Ω ± 0.02 Ω", 0.69, 0.73],
      ["0.71Ω±20 mΩ", 0.69, 0.73],
      ["710 mΩ ± 0.02 Ω", 0.69, 0.73],
      ["0.71 Ω ± 10 %", 0.639, 0.781],
      ["0.71 Ω ±(2 % + 2 digits)", 0.6758, 0.7442],
      ["0.01 ± 0.02 Ω", 0, 0.03],
      ["0.69 Ω to 0.73 Ω", 0.69, 0.73],
    ])("%s keeps its band as typed", (text, low, high) => {
      const { zs } = made({ zs: text });
      expect(zs.low).toBeCloseTo(low, 9);
      expect(zs.high).toBeCloseTo(high, 9);
    });

    test("± goes with what is not read as well, and below zero only with a temperature", () => {
      const { length, at } = made({ length: "12 ± 1 m", at: "2 °C ± 4 °C" });
      expect([length.value, length.low, length.high]).toEqual([12, 11, 13]);
      expect([at.low, at.high]).toEqual([0, 6]);
      expect(made({ at: "-2 °C ± 4 °C" }).at).toMatchObject({ low: -6, high: 2 });
    });

    test.each([
      ["0.71 ±"],
      ["± 0.02 Ω"],
      ["0.71 ± 0.02"],
      ["0.71 ± 0.02 A"],
      ["0.71 A ± 0.02 Ω"],
      ["0.71 Ω ± -0.02 Ω"],
      ["0.71 ± 0.02 ± 0.03 Ω"],
      [">99.9 Ω ± 1 Ω"],
      ["0.71 Ω ± <0.02 Ω"],
      ["0.6 Ω to 0.7 Ω ± 0.1 Ω"],
    ])("%s is refused with the forms it may have", (text) => {
      const result = givenFromText(read, { zs: text });
      if (result.ok) throw new Error("accepted");
      expect(result.issues).toMatchObject([{ code: "not-a-doubt", path: ["zs"], found: text }]);
      expect(result.issues[0]?.advice).toContain('"0.71 ± 0.02 Ω"');
    });
  });
});
