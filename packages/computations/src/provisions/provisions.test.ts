import { missingOf, nodesOf, Reckoner, type Verdict } from "@good-grounds/core";
import { regulation } from "@good-grounds/tables";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COMPUTATIONS } from "../computations.ts";
import { givenFromText } from "../given.ts";
import type { Need } from "../need.ts";
import type { Assessor } from "./assessor.ts";
import { ASSESSORS, PROVISIONS } from "./index.ts";

type Written = Record<string, string | readonly string[]>;

const reckon = new Reckoner(true);

function conclude(one: Assessor, given: Written) {
  const made = givenFromText(one.needs, given);
  if (!made.ok) throw new Error(`${one.id}: ${JSON.stringify(made.issues)}`);
  return one.conclude(made.given, reckon);
}

/** These rest on checks that take what was not recorded as a stated assumption, so that an answer may change them. */
const ON_ASSUMPTIONS = ["automatic-disconnection", "overcurrent-protects"];

/** What can be answered to a need: every word, or the figures of the examples. */
function answers(one: Assessor, name: string, need: Need): readonly (string | readonly string[])[] {
  switch (need.kind) {
    case "yes-no":
      return ["yes", "no"];
    case "word":
      return need.words;
    case "word-list":
    case "rcd-tests":
      return need.words.flatMap((word) => [[word], [word, need.words[0] as string]]);
    default:
      return one.examples.flatMap(({ given }) => given[name] ?? []);
  }
}

/** Answers to every need, and which of them are held back. */
function cases(one: Assessor) {
  const names = Object.entries(one.needs).filter(([name, need]) => answers(one, name, need).length > 0);
  return fc.tuple(
    fc.record(Object.fromEntries(names.map(([name, need]) => [name, fc.constantFrom(...answers(one, name, need))]))),
    fc.subarray(names.map(([name]) => name)),
  ) as fc.Arbitrary<[Written, string[]]>;
}

const fails = (verdict: Verdict) => verdict === "not-met";
const decided = (verdict: Verdict) => verdict === "met" || verdict === "not-met" || verdict === "not-applicable";

test("every provision has an assessor, and every assessor can be computed by name", () => {
  expect(new Set(ASSESSORS.map(({ provision }) => provision))).toEqual(new Set(PROVISIONS));
  for (const one of ASSESSORS) expect(COMPUTATIONS.get(one.id)).toBe(one);
});

test("every assessor has examples that are met, not met and open", () => {
  for (const { id, examples } of ASSESSORS) {
    const verdicts = examples.map(({ verdict }) => verdict);
    expect(verdicts, id).toEqual(expect.arrayContaining(["met", "not-met", "not-known"]));
  }
});

test("regulations are cited by numbers of the standard's form", () => {
  for (const { id, regulations } of ASSESSORS)
    for (const number of regulations) expect(number, id).toMatch(/^[4-7]\d\d(\.\d+)+$|^[4-7]\d\d\.\d+\.\d+$/);
  expect(regulation("416.2.1")).toBeDefined();
});

describe.each(ASSESSORS.map((one) => [one.id, one] as const))("%s", (id, one) => {
  test.skipIf(ON_ASSUMPTIONS.includes(id))("a verdict given with facts missing stands when they are answered", () => {
    fc.assert(
      fc.property(cases(one), ([whole, kept]) => {
        const part = Object.fromEntries(kept.map((name) => [name, whole[name] as string]));
        const before = conclude(one, part).judgement.verdict;
        if (!decided(before)) return;
        const after = conclude(one, whole).judgement.verdict;
        expect(fails(after), JSON.stringify({ part, whole, before, after })).toBe(fails(before));
        expect(decided(after)).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  test("what is not known names what would settle it, by needs of its own", () => {
    const own = new Set(Object.values(one.needs).map((need) => ("term" in need ? need.term.id : need.matter.id)));
    fc.assert(
      fc.property(cases(one), ([whole, kept]) => {
        const part = Object.fromEntries(kept.map((name) => [name, whole[name] as string]));
        const { judgement } = conclude(one, part);
        if (judgement.verdict !== "not-known") return;
        const missing = missingOf(judgement).map((leaf) => (leaf.kind === "not-known" ? leaf.term.id : leaf.matter.id));
        expect(missing.length, JSON.stringify(part)).toBeGreaterThan(0);
        if (!ON_ASSUMPTIONS.includes(id)) for (const name of missing) expect([...own]).toContain(name);
      }),
      { numRuns: 200 },
    );
  });

  test("a decided verdict rests on what was given", () => {
    for (const { given, verdict } of one.examples) {
      if (verdict === undefined || !decided(verdict)) continue;
      const leaves = [...nodesOf(conclude(one, given).judgement)].filter(
        ({ kind }) => kind === "fact" || kind === "seen",
      );
      expect(leaves.length).toBeGreaterThan(0);
    }
  });
});
