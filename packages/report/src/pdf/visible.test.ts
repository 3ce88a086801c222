import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fonts } from "./fonts.ts";
import { visible, visibleData, visibleDrawing } from "./visible.ts";

const { covers } = fonts();
const BREAK = "\u200b";

describe("the print face", () => {
  test.each([..."aZ09 éŁșğΩжЯ²½€£°±×÷−≤≥√→–…“”†"])("has a glyph for %s", (character) => {
    expect(covers(character.codePointAt(0) ?? 0)).toBe(true);
  });

  test.each(["א", "م", "灯", "🙂", "\u0007", "\u{10fffd}"])("has none for %j", (character) => {
    expect(covers(character.codePointAt(0) ?? 0)).toBe(false);
  });
});

describe("text as the page shows it", () => {
  test.each([
    ["a plain sentence, 6 mm² at 230 V", "a plain sentence, 6 mm² at 230 V"],
    ["smile 🙂", "smile [U+1F642]"],
    ["של", "[U+05E9 U+05DC]"],
    ["pay \u202eeno\u202c now", "pay [U+202E]eno[U+202C] now"],
    ["zero\u200bwidth", "zero[U+200B]width"],
    ["half \ud83d", "half [U+D83D]"],
    ["bell \u0007", "bell [U+0007]"],
    ["one\ttwo", "one two"],
    ["one\r\ntwo\u2028three", "one\ntwo\nthree"],
    ["e\u0301", "é"],
  ])("%j is shown as %j", (text, shown) => {
    expect(visible(text, covers)).toBe(shown);
  });

  test("a very long word may be broken and loses nothing", () => {
    const word = "x".repeat(100);
    const shown = visible(word, covers);
    expect(shown.split(BREAK).every((piece) => piece.length <= 4)).toBe(true);
    expect(shown.replaceAll(BREAK, "")).toBe(word);
  });

  test("the name of a standard breaks at its joints only", () => {
    const shown = visible("7671:2018+A2:2022+A3:2024.", covers);
    expect(shown.split(BREAK)).toEqual(["7671:2018+", "A2:2022+", "A3:2024."]);
  });

  test("whatever the text, only characters of the print face are left", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
        for (const character of visible(text, covers)) {
          const point = character.codePointAt(0) ?? 0;
          expect(character === "\n" || character === BREAK || covers(point)).toBe(true);
        }
      }),
    );
  });

  test("data keeps its shape and everything that is no text", () => {
    expect(visibleData({ a: ["\u202e", 1, true, null], b: { c: "d" } }, covers)).toEqual({
      a: ["[U+202E]", 1, true, null],
      b: { c: "d" },
    });
  });

  test("a drawing keeps its long attributes in one piece", () => {
    const svg = `<path d="M${"0L".repeat(40)}"/><text>א</text>`;
    expect(visibleDrawing(svg, covers)).toBe(svg.replace("א", "[U+05D0]"));
  });
});
