import { faultText, formatted, ownTexts, readDocument, readLibrary } from "@good-grounds/topics/texts";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const TEXTS = ownTexts();
const SHARED = TEXTS.filter(({ file }) => file.startsWith("shared/"));

/** Reads a text beside the shared ones, and has its faults printed; every one of them stands on a line of the text. */
function read(text: string): void {
  const { faults } = readLibrary([...SHARED, { file: "a.topic", text }]);
  const lines = text.split(/\r?\n/).length;
  for (const fault of faults) {
    expect(fault.at.line).toBeGreaterThanOrEqual(1);
    expect(fault.at.line).toBeLessThanOrEqual(lines);
    expect(fault.found).not.toBe("");
    expect(fault.expected).not.toBe("");
    expect(fault.advice).not.toBe("");
    expect(faultText(fault, text).length).toBeLessThan(10_000);
  }
  const made = formatted(text, "a.topic");
  if (made.text !== undefined) expect(formatted(made.text, "a.topic").text).toBe(made.text);
}

const WORDS = [
  ..."topic shared in answers uses given fact amount contested state route layer departure danger contradiction said".split(
    " ",
  ),
  ..."remedy: example formerly found by glance called plain when and or not is always all of any none worse better".split(
    " ",
  ),
  ..."-> limited: taking makes unsure open because as holds until one event gone sound there retired".split(" "),
  ..."constructor __proto__ heat is-it yes no C1 C2 C3 FI none (source) [411.3] 5 m mm , : / # \t \u00a0 \u2028 \0".split(
    " ",
  ),
];
const someLine = fc
  .tuple(fc.nat({ max: 6 }), fc.array(fc.constantFrom(...WORDS), { maxLength: 8 }))
  .map(([depth, words]) => `${"  ".repeat(depth)}${words.join(" ")}`);

describe("any text whatever is read without throwing", () => {
  test("garbage", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 400 }), read), { numRuns: 300 });
  });

  test("words of the language in any order and depth", () => {
    const some = fc
      .array(someLine, { maxLength: 30 })
      .map((lines) => ["topic a: A", "  in boards", ...lines].join("\n"));
    fc.assert(fc.property(some, read), { numRuns: 400 });
  });

  test("own texts that were cut, or had a piece taken out or put in", () => {
    const changed = fc
      .tuple(fc.constantFrom(...TEXTS), fc.nat(), fc.nat(), fc.constantFrom("", ...WORDS, "\n", "\r\n", "  "))
      .map(([{ text }, a, b, piece]) => {
        const [from, to] = [a % text.length, b % text.length].sort((x, y) => x - y) as [number, number];
        return text.slice(0, from) + piece + (b % 2 === 0 ? text.slice(Math.min(to, from + 40)) : "");
      });
    fc.assert(fc.property(changed, read), { numRuns: 300 });
  });

  test.each([
    ["nothing", ""],
    ["a byte order mark", "\uFEFFtopic a: A\n  in boards\n"],
    ["lines that end as on other machines", "topic a: A\r\n  in boards\r\n"],
    ["NUL", "topic a: A\n  in boards\n  fact b: \0\0?\n"],
    ["a tab in front", "topic a: A\n\tin boards\n"],
    ["very deep", Array.from({ length: 3000 }, (_, i) => `${" ".repeat(2 * i)}all of`).join("\n")],
    ["a line of a million spaces", `topic a: A\n  departure: x${" ".repeat(1_000_000)}y\n`],
    ["a line of a million commas", `topic a: A\n  answers ${"a , ".repeat(250_000)}\n`],
    ["a line of a million brackets", `topic a: A\n  example b\n    -> C1 ${"( ".repeat(500_000)}\n`],
    ["half a million lines", `topic a: A\n${"  x\n".repeat(250_000)}`],
    ["a condition of a hundred thousand words", `topic a: A\n  departure: x\n    when ${"a and ".repeat(100_000)}b\n`],
    [
      "names that objects have by themselves",
      "topic constructor: A\n  in boards\n  formerly constructor as constructor: constructor is constructor\n",
    ],
  ])("%s", (_, text) => read(text));

  test("a mark in front and other line ends change nothing", () => {
    for (const { file, text } of TEXTS) {
      const plain = readDocument(text, file);
      expect(readDocument(`\uFEFF${text.replaceAll("\n", "\r\n")}`, file)).toEqual(plain);
    }
  });
});
