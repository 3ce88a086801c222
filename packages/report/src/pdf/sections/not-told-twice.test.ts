import fc from "fast-check";
import { expect, test } from "vitest";
import { notToldTwice } from "./not-told-twice.ts";

const STATEMENTS = ["Concealed cables were not exposed", "Loft space beyond the hatch", "Alarm circuit not isolated"];

test.each([
  ["Concealed cables; the loft beyond the hatch.", []],
  ["Concealed cable. The garage beyond the hatch.", ["The garage beyond the hatch."]],
  ["Portable equipment; concealed cables", ["Portable equipment"]],
  ["The loft; portable equipment; the alarm panel", ["portable equipment", "the alarm panel"]],
  ["Cables in the loft", ["Cables in the loft"]],
  ["No. 4; —", ["No. 4", "—"]],
])("of %j is left %j", (summary, left) => {
  expect(notToldTwice(summary, STATEMENTS)).toEqual(left);
});

test("a summary stands whole where no statement says any of it", () => {
  expect(notToldTwice("The annexe; the lift.", [])).toEqual(["The annexe", "the lift."]);
});

test("every word that means something is told, in the clauses left or in one statement", () => {
  const word = fc.constantFrom("loft", "cellar", "garage", "lift", "the", "and");
  const text = fc.array(word, { minLength: 1, maxLength: 4 }).map((words) => words.join(" "));
  fc.assert(
    fc.property(fc.array(text, { minLength: 1, maxLength: 4 }), fc.array(text, { maxLength: 3 }), (clauses, said) => {
      const left = notToldTwice(clauses.join("; "), said);
      for (const clause of clauses) {
        const words = clause.split(" ").filter((one) => one !== "the" && one !== "and");
        expect(left.includes(clause) || said.some((one) => words.every((each) => one.includes(each)))).toBe(true);
      }
    }),
  );
});
