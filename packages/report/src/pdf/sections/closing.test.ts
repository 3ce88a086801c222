import { expect, test } from "vitest";
import { changed, changedAndSigned, EXAMPLE, inputOf } from "../../../../../outside/reports/example.ts";
import { Drawings } from "../drawings.ts";
import { recipients, signatures } from "./closing.ts";

const DRAWN = { drawn: "M20 80L60 20" };
const drawFirst = (file: Readonly<Record<string, unknown>>) => {
  Object.assign((file.signatures as object[])[0] as object, DRAWN);
};

test("a signature stands as it was drawn, with what it was put to", () => {
  const drawings = new Drawings();
  const { rows, note } = signatures(inputOf(changedAndSigned(drawFirst)), drawings);
  expect(rows.map(({ drawn }) => drawn === "")).toEqual([false, true]);
  expect(drawings.all()[0]?.svg).toContain('d="M20 80L60 20"');
  expect(rows[0]?.words).toBe("Signature drawn by J. Sample (invented)");
  expect(rows[0]?.cells.at(-1)?.[1].words).toMatch(/^6 October 2026, 18:40; content [0-9a-f]{16}$/);
  expect(note).toContain("SHA-256");
});

test.each([
  ["a hash of nothing but zeros", "0".repeat(64), "The content was changed after J. Sample (invented) signed"],
  ["no hash", undefined, "it cannot be checked what was signed"],
])("with %s it is told in words, not drawn, and counts for nothing", (_, content, said) => {
  const drawings = new Drawings();
  const text = changed((file) => {
    drawFirst(file);
    file.signatures = (file.signatures as object[]).map((one) => ({ ...one, content }));
  });
  const { rows, note, state } = signatures(inputOf(text), drawings);
  expect(state).toBe("Nobody has signed this content: a draft until somebody does");
  expect(rows.map(({ drawn }) => drawn)).toEqual(["", ""]);
  expect(drawings.all()).toEqual([]);
  expect(rows[0]?.cells.at(-1)?.[1]).toEqual({ words: expect.stringContaining(said), open: true });
  expect(rows[0]?.cells.at(-1)?.[1].words).toContain("does not count as signed for this content");
  expect(note).toBe("");
});

test("a signature without strokes is the typed name on the line, and one that does not stand is no name", () => {
  const typed = (text: string) => signatures(inputOf(text), new Drawings()).rows.map((row) => row.typed);
  expect(typed(EXAMPLE)).toEqual(["J. Sample (invented)", "M. Specimen (invented)"]);
  expect(typed(changed((file) => Object.assign(file, { title: "another" })))).toEqual(["", ""]);
});

test("a capacity nobody signed in is asked for with a line to sign on", () => {
  const text = changed((file) => {
    file.signatures = (file.signatures as object[]).slice(0, 1);
  });
  const { rows, words } = signatures(inputOf(text), new Drawings());
  expect(rows.map(({ as }) => as)).toEqual(["Inspected and tested", "Authorised for issue"]);
  expect(rows[1]?.cells).toEqual([["Signed", { words: "Not signed yet: a draft until it is", open: true }]]);
  expect(words).toContain("reasonable skill and care");
});

test("the signatures of the example stand for what stands in it", () => {
  const { rows } = signatures(inputOf(EXAMPLE), new Drawings());
  expect(rows.map(({ cells }) => cells.at(-1)?.[1].open)).toEqual([false, false]);
});

test.each(["england", "wales", "scotland"])("%s: danger on the supply side goes to 105", (nation) => {
  const { cautions } = recipients(inputOf(changed((file) => Object.assign(file.brief as object, { nation }))));
  expect(cautions.join(" ")).toMatch(/emergency line, 105\..*999/);
});

test("Northern Ireland: danger on the supply side goes to the distributor's own number", () => {
  const nation = "northern-ireland";
  const { cautions } = recipients(inputOf(changed((file) => Object.assign(file.brief as object, { nation }))));
  expect(cautions.join(" ")).not.toContain("105");
  expect(cautions.join(" ")).toMatch(/distributor's own emergency number, as shown at the meter or on the bill\..*999/);
});

test("what the law asks is pointed to as reminders, not as legal advice", () => {
  const { paragraphs } = recipients(inputOf(EXAMPLE));
  expect(paragraphs.find((one) => one.startsWith("The law may ask more"))).toMatch(/reminders and not as legal advice/);
});
