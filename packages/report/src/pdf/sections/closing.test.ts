import { expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../../checks/reports/example.ts";
import { Drawings } from "../drawings.ts";
import { recipients, signatures } from "./closing.ts";

test("a signature stands as it was drawn, with what it was put to", () => {
  const drawings = new Drawings();
  const text = changed((file) => {
    Object.assign((file.signatures as object[])[0] as object, { drawn: "M20 80L60 20", content: "5c".repeat(32) });
  });
  const { rows, note } = signatures(inputOf(text), drawings);
  expect(rows.map(({ drawn }) => drawn === "")).toEqual([false, true]);
  expect(drawings.all()[0]?.svg).toContain('d="M20 80L60 20"');
  expect(rows[0]?.words).toBe("Signature drawn by J. Sample (invented)");
  expect(rows[0]?.cells[3]?.words).toContain("content 5c5c5c5c5c5c5c5c");
  expect(note).toContain("SHA-256");
});

test("without a content nothing is said of one", () => {
  const { rows, note } = signatures(inputOf(EXAMPLE), new Drawings());
  expect(rows[0]?.cells[3]?.words).toBe("6 October 2026, 18:40");
  expect(note).toBe("");
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

test("no dates of the law are promised, and that there are none is said", () => {
  const { cautions, paragraphs } = recipients(inputOf(EXAMPLE));
  const words = [...cautions, ...paragraphs].join(" ");
  expect(words).not.toMatch(/dates that follow/i);
  expect(paragraphs.find((one) => one.startsWith("The law may ask more"))).toContain("does not give");
});
