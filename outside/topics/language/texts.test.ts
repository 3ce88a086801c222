import { TOPICS } from "@good-grounds/topics";
import { formatted, ownTexts, printDocument, readDocument, readLibrary, topicOf } from "@good-grounds/topics/texts";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { meaningOf } from "./meaning.ts";

const TEXTS = ownTexts();
const LIBRARY = readLibrary(TEXTS);
const notesOf = (text: string) =>
  text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line.startsWith("#"));

/** The same text badly set out: conditions of one line below "all of" or "any of", blank lines, spaces at the ends, CRLF. */
function untidy(text: string, choose: (among: number) => number): string {
  const lines = text.split("\n").flatMap((line) => {
    const indent = line.length - line.trimStart().length;
    const joined = /^(\s*(?:when|there when|gone when|sound when) )([a-z0-9-]+ (?:and [a-z0-9-]+ ?)+)$/.exec(
      `${line} `,
    );
    const spread =
      joined === null || choose(2) === 0
        ? [line]
        : [
            `${joined[1]}all of`,
            ...(joined[2] ?? "")
              .trim()
              .split(" and ")
              .map((one) => `${" ".repeat(indent + 2)}${one}`),
          ];
    return [...spread.map((one) => (choose(3) === 0 ? `${one}  ` : one)), ...(choose(5) === 0 ? [""] : [])];
  });
  return lines.join(choose(2) === 0 ? "\r\n" : "\n");
}

describe.each(TEXTS.map((one) => [one.file, one.text] as const))("%s", (file, text) => {
  const { document, faults } = readDocument(text, file);

  test("is read without a fault and printed back to itself", () => {
    expect(faults).toEqual([]);
    expect(document === undefined ? "" : printDocument(document)).toBe(text);
  });

  test("is read back from what was printed as the same topic", () => {
    const again = readDocument(document === undefined ? "" : printDocument(document), file);
    expect(again.document).toEqual(document);
    if (document?.kind !== "topic" || again.document === undefined) return;
    const read = topicOf(again.document, LIBRARY.shared);
    expect(read.faults).toEqual([]);
    expect(read.topic).toEqual(TOPICS.find(({ id }) => id === document.id.text));
  });

  test("set out badly it is formatted to itself: the same meaning, every note in its order, once and for all", () => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat({ max: 59 })), (numbers) => {
        const made = untidy(text, (among) => (numbers.next().value ?? 0) % among);
        const once = formatted(made, file);
        expect(once.faults).toEqual([]);
        const now = once.text ?? "";
        expect(notesOf(now)).toEqual(notesOf(made));
        expect(meaningOf(readDocument(now, file).document)).toEqual(meaningOf(readDocument(made, file).document));
        expect(formatted(now, file).text).toBe(now);
      }),
      { numRuns: 2 },
    );
  });
});

describe("the formatter writes nothing", () => {
  const HEAD = "topic small: A small topic\n  in boards\n";

  test("where a note has no place in what it would write", () => {
    const { text, faults } = formatted(
      `${HEAD}  fact a: Is it?\n    # why\n    found by glance\n    no: n\n    yes: y\n`,
      "a",
    );
    expect(text).toBeUndefined();
    expect(faults.map(({ found, at }) => [found, at.line])).toEqual([['a note in front of "found by glance"', 5]]);
  });

  test("where a note would come to stand behind another one", () => {
    const { text, faults } = formatted(
      `${HEAD}  fact a: Is it?\n    found by glance\n    # first\n    retired old: read as no\n    # second\n    no: n\n    yes: y\n`,
      "a",
    );
    expect(text).toBeUndefined();
    expect(faults).toHaveLength(1);
  });

  test("where the text cannot be read", () => {
    const { text, faults } = formatted(`${HEAD}  fact\n`, "a");
    expect(text).toBeUndefined();
    expect(faults.length).toBeGreaterThan(0);
  });

  test("notes at the end stay there", () => {
    const text = `${HEAD}  fact a: Is it?\n    found by glance\n    no: n\n    yes: y\n# the end\n`;
    expect(notesOf(formatted(text, "a").text ?? "")).toEqual(["# the end"]);
  });
});
