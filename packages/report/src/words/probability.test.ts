import { type ComparedConformity, type Conformity, matter, TERM } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { inDoubt, metInDoubt, percentWords, probabilityClause, probabilityWords } from "./probability.ts";

const deciding: ComparedConformity = {
  matter: matter("invented", "an invented comparison"),
  relation: "at-most",
  unit: "ohm",
  difference: 0.1,
  standard: 0.03,
  expanded: 0.06,
  probability: 0.93,
  lowest: 0.93,
  highest: 0.93,
  decision: { simple: "met", guarded: "too-near" },
  notes: [],
  budget: [
    { kind: "reading", term: TERM.measuredZs, place: [], values: 1, instrument: "m", contribution: 0.03, share: 0.98 },
    { kind: "leads", term: TERM.measuredR1R2, place: [], values: 2, instrument: "m", contribution: 0.004, share: 0.02 },
  ],
};

function sure(more: Partial<Conformity>): Conformity {
  return {
    kind: "limit",
    probability: 0.93,
    lowest: 0.93,
    highest: 0.93,
    rule: "guarded",
    decision: deciding.decision,
    notes: ["leads-assumed"],
    deciding,
    ...more,
  };
}

describe("words about how sure a finding is", () => {
  test.each([
    [1, "over 99.9\u00a0%"],
    [0.9996, "over 99.9\u00a0%"],
    [0.9949, "99.5\u00a0%"],
    [0.954, "95\u00a0%"],
    [0.5, "50\u00a0%"],
    [0.006, "0.6\u00a0%"],
    [0.0004, "under 0.1\u00a0%"],
    [0, "under 0.1\u00a0%"],
  ])("%f is %s", (chance, words) => {
    expect(percentWords(chance)).toBe(words);
  });

  test("probability, rules with the chosen one marked, sources; leads that add little are not explained", () => {
    expect(probabilityWords(sure({}))).toEqual([
      "Probability that it is met: 93\u00a0% (U = 0.0600 Ω, k = 2).",
      "Simple acceptance: met; guarded acceptance (chosen): too near to call.",
      "Doubt from: reading Zs 98\u00a0%, leads R1+R2 in 2 readings 2\u00a0%.",
    ]);
  });

  test("ranges that tell are said; a probability that cannot be given is not made up", () => {
    expect(probabilityClause(sure({ lowest: 0.2, highest: 1 }))).toContain(
      "20\u00a0% to over 99.9\u00a0% as the ranges",
    );
    expect(probabilityClause(sure({ probability: null }))).toMatch(/^No probability can be given/);
    expect(probabilityClause(sure({ kind: "agreement", probability: 0.02 }))).toContain("Errors alone");
  });

  test("a reader is told where it is too near, or less than 95 % sure", () => {
    expect(inDoubt(sure({}), "met")).toBe(true);
    expect(metInDoubt(sure({}), "met")).toBe(true);
    expect(metInDoubt(sure({}), "not-met")).toBe(false);
    expect(inDoubt(sure({ probability: 0.96 }), "met")).toBe(false);
    expect(inDoubt(sure({ probability: 0.999 }), "too-near")).toBe(true);
    expect(inDoubt(sure({ kind: "agreement", probability: 0.5, highest: 0.5 }), "met")).toBe(false);
    expect(inDoubt(sure({ kind: "agreement", probability: 0.01, highest: 0.01 }), "met")).toBe(true);
    for (const verdict of ["not-known", "not-applicable"] as const) expect(inDoubt(sure({}), verdict)).toBe(false);
    expect(inDoubt(sure({ deciding: null }), "not-met")).toBe(false);
    expect(probabilityWords(sure({ deciding: { ...deciding, budget: [] } }))).toEqual([]);
  });
});
