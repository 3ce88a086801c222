import { ownTexts, readDocument, readLibrary, type TextFault, topicOf } from "@good-grounds/topics/texts";
import { describe, expect, test } from "vitest";
import { type Found, slipsOf, withWord, wordsIn } from "./words-in.ts";

const TEXTS = ownTexts();
const { documents, shared } = readLibrary(TEXTS);
const TOPIC_TEXTS = documents
  .filter(({ kind }) => kind === "topic")
  .map((document) => ({ document, text: TEXTS.find(({ file }) => file === document.file)?.text ?? "" }));

/** What defines a name, or names what other parts of the program know: items, checks, recorded values, former names. */
const NO_USE =
  /^(?:id|items)$|statements\.(?:fact|amount|contested|state|route|danger)\.name$|(?:values|positions|layers)\.name$|answered\.(?:and\.)?(?:by|matter)|recorded\.(?:property|gives\.recorded)|formerly\.(?:name|values\.former)|retired\.value/;

function faultsOf(text: string, file: string): readonly TextFault[] {
  const { document, faults } = readDocument(text, file);
  return [...faults, ...(document === undefined ? [] : topicOf(document, shared).faults)];
}

/** Each name of a text at each kind of place it is used in, once. */
function usedIn(words: readonly Found[]): readonly Found[] {
  const once = new Map(
    words.filter(({ path }) => !NO_USE.test(path)).map((one) => [`${one.path.replaceAll(".of", "")} ${one.text}`, one]),
  );
  return [...once.values()].filter(({ text }) => !/\d/.test(text[0] ?? ""));
}

describe("a misspelt name", () => {
  test("is told once, on its line, with the right name as first advice", () => {
    let tried = 0;
    const otherwise: string[] = [];
    const another: string[] = [];
    for (const { document, text } of TOPIC_TEXTS)
      for (const word of usedIn(wordsIn(document)))
        for (const slip of slipsOf(word.text)) {
          tried += 1;
          const faults = faultsOf(withWord(text, word, slip), document.file);
          const [fault] = faults;
          // A slip that is another name that may stand there is no slip.
          if (fault === undefined) another.push(`${document.file}:${word.at.line} ${word.text} > ${slip}`);
          else if (faults.length > 1 || fault.at.line !== word.at.line || fault.advice !== `is it "${word.text}"?`)
            otherwise.push(`${document.file}:${word.at.line} ${word.text} > ${slip}: ${fault.advice}`);
        }
    expect(tried).toBeGreaterThan(10_000);
    expect(another.length, another.join("\n")).toBeLessThanOrEqual(6);
    // Names of one or two letters (types of RCD, kinds of earthing, units), and pairs of names that are a letter or two
    // apart: tn-c-s and tn-s, off and on, serves and series, sealed-unmarked and sealed-marked.
    expect(otherwise.length, otherwise.join("\n")).toBeLessThanOrEqual(40);
    expect(otherwise.length / tried).toBeLessThan(0.003);
  });

  test("where it is defined: one fault for the name, whatever number of lines use it", () => {
    for (const { document, text } of TOPIC_TEXTS.filter((_, i) => i % 4 === 0))
      for (const word of wordsIn(document).filter(({ path }) => /(?:fact|amount|contested)\.name$/.test(path))) {
        const [slip = ""] = slipsOf(word.text);
        const faults = faultsOf(withWord(text, word, slip), document.file);
        expect(
          faults.map(({ found }) => found).filter((found) => !found.includes("is no")),
          document.file,
        ).toEqual([`nothing here is called "${word.text}"`]);
        expect(faults[0]?.advice).toBe(`is it "${slip}"?`);
      }
  });

  test("under uses: told once, and what it would have brought is not missed as well", () => {
    for (const { document, text } of TOPIC_TEXTS)
      for (const word of wordsIn(document).filter(({ path }) => path === "uses")) {
        const [slip = ""] = slipsOf(word.text);
        const faults = faultsOf(withWord(text, word, slip), document.file);
        expect(
          faults.map(({ found, advice }) => [found, advice]),
          document.file,
        ).toEqual([[`nothing shared is called "${slip}"`, `is it "${word.text}"?`]]);
      }
  });

  test("in a shared text: told at its line of that text", () => {
    for (const document of documents.filter(({ kind }) => kind === "shared"))
      for (const word of wordsIn(document).filter(({ path }) => /when(?:\.of)*\.(?:name|values)$/.test(path))) {
        const [slip = ""] = slipsOf(word.text);
        const texts = TEXTS.filter(({ file }) => file.startsWith("shared/")).map((one) =>
          one.file === document.file ? { ...one, text: withWord(one.text, word, slip) } : one,
        );
        const { faults } = readLibrary(texts);
        expect(
          faults.map(({ file, at, advice }) => [file, at.line, advice]),
          slip,
        ).toEqual([[document.file, word.at.line, `is it "${word.text}"?`]]);
      }
  });
});
