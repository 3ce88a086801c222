import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { columns, wrapped } from "./wrap.ts";

describe("breaking lines", () => {
  test("a number and its unit stay on one line", () => {
    expect(wrapped("from 0.792 Ω to 0.861 Ω", 21)).toEqual(["from 0.792 Ω to", "0.861 Ω"]);
    expect(wrapped("2.5 mm² and 4 mm²", 12)).toEqual(["2.5 mm² and", "4 mm²"]);
  });

  test("words that only begin like a unit are words", () => {
    expect(wrapped("for 2 months", 6)).toEqual(["for 2", "months"]);
  });

  test("no line is wider than asked, and no word is lost", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 80 }), fc.integer({ min: 4, max: 40 }), (text, width) => {
        const lines = wrapped(text, width);
        for (const line of lines) expect(columns(line)).toBeLessThanOrEqual(width);
        const letters = (words: string) => words.replaceAll(/[\s\p{C}]/gu, "");
        expect(letters(lines.join(""))).toBe(letters(text));
      }),
    );
  });
});
