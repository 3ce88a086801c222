import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allOf, anyOf, isOpen, type Verdict } from "./verdict.ts";

const VERDICTS: readonly Verdict[] = ["met", "not-met", "too-near", "not-known", "not-applicable"];
const verdicts = fc.array(fc.constantFrom(...VERDICTS), { maxLength: 5 });

/** Every way the open verdicts of a list can turn out. */
function completions(list: readonly Verdict[]): Verdict[][] {
  return list.reduce<Verdict[][]>(
    (ways, verdict) =>
      ways.flatMap((way) => (isOpen(verdict) ? (["met", "not-met"] as const) : [verdict]).map((one) => [...way, one])),
    [[]],
  );
}

describe.each([
  ["allOf", allOf],
  ["anyOf", anyOf],
])("%s", (_, join) => {
  test("is decided exactly when every completion of the unknown decides the same", () => {
    fc.assert(
      fc.property(verdicts, (list) => {
        const outcomes = new Set(completions(list).map((way) => join(way)));
        const [only] = outcomes;
        if (outcomes.size === 1) expect(join(list)).toBe(only);
        else expect(isOpen(join(list))).toBe(true);
      }),
    );
  });

  test("does not depend on the order of its parts", () => {
    fc.assert(
      fc.property(verdicts, (list) => {
        expect(join([...list].reverse())).toBe(join(list));
      }),
    );
  });

  test("leaves out what does not apply", () => {
    fc.assert(
      fc.property(verdicts, (list) => {
        expect(join([...list, "not-applicable"])).toBe(join(list));
      }),
    );
  });
});
