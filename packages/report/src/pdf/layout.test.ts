import { describe, expect, test } from "vitest";
import { layOut, ReportRefused } from "./layout.ts";

const HEAD = '#set document(title: "A title", date: datetime(year: 2026, month: 1, day: 2))\n';
const SVG = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><rect width="9" height="9"/></svg>';
const files = new Map([["drawing.svg", SVG]]);
const SOUND = `${HEAD}= One\n#image("drawing.svg", alt: "a square")\n== Two\nWords.`;

describe("the gate before a document is written", () => {
  test("lets a sound document through", () => {
    expect(Buffer.from(layOut(SOUND, files)).subarray(0, 5).toString()).toBe("%PDF-");
  });

  test.each([
    ["a drawing without alternative text", SOUND.replace(', alt: "a square"', ""), /alt/i],
    ["a document without a title", SOUND.replace('title: "A title", ', ""), /title/i],
    ["a skipped level of headings", SOUND.replace("== Two", "=== Two"), /heading/i],
    ["a mistake in the layout", `${SOUND}\n#nothing-of-this-name`, /unknown variable/],
    ["a file that was not given", SOUND.replace("drawing.svg", "other.svg"), /other\.svg/],
  ])("refuses %s and says why", (_, template, why) => {
    expect(() => layOut(template, files)).toThrow(ReportRefused);
    expect(() => layOut(template, files)).toThrow(why);
  });
});
