import type { AgreementFigures, ChoiceComparison, ChoiceMade, Classification, CohenKappa } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { renderChoices } from "./comparison.ts";

function choice(classification: Classification, by: string, more: Partial<ChoiceMade> = {}): ChoiceMade {
  return {
    classification,
    reason: `Because ${by} saw it so.`,
    by,
    person: by.toLowerCase(),
    file: "EX-1",
    source: "one.json",
    observation: "o1",
    date: "2026-10-20",
    edition: "2018+A4",
    ...more,
  };
}

const NOTHING: AgreementFigures = {
  by: "person",
  all: { pairs: 0, agreed: 0 },
  within: { pairs: 0, agreed: 0 },
  between: { pairs: 0, agreed: 0 },
  several: { judges: 0, kappa: { defined: false, because: "no-items", items: 0, ratedOnce: 0 } },
  varied: 0,
  tied: 0,
  two: [],
  notPaired: 0,
};

function comparison(more: Partial<ChoiceComparison>): ChoiceComparison {
  return {
    count: {
      inspections: 2,
      invented: 0,
      observations: 9,
      compared: 5,
      withoutChoice: 2,
      withoutTopic: 1,
      withoutFacts: 1,
      copies: 0,
      factSets: 3,
      judgedAgain: 1,
      tooManyFacts: 0,
    },
    sets: [],
    differences: [],
    near: [],
    agreement: NOTHING,
    ...more,
  };
}

function rendered(one: ChoiceComparison, width = 80): string {
  const text = renderChoices(one, { width, unused: 0, least: 10 });
  for (const line of text.split("\n")) expect([...line].length).toBeLessThanOrEqual(width);
  return text;
}

const SET = {
  topic: "broken-front",
  facts: [
    { name: "gap", value: "12 mm" },
    { name: "reach", value: { notKnown: true } },
    { name: "bath", value: { notApplicable: true } },
  ],
  positions: [{ point: "small-fingers", position: "count" }],
} as const;

describe("the comparison of choices as text", () => {
  test("says what was left out and why, and that there is nothing to show", () => {
    const text = rendered(comparison({}));
    expect(text).toContain("5 compared, of 9 observations in 2 inspections.");
    expect(text).toContain("Left out: 2 without a classification, 1 without a topic, 1 without facts.");
    expect(text).toMatch(/the choice was the\s+same\./);
    expect(text).toContain("Caution: no set of facts");
    expect(rendered(comparison({ count: { ...comparison({}).count, judgedAgain: 0 } }))).toContain(
      "no set of facts was judged more than once",
    );
  });

  test("stands choices beside each other where there is room, and below each other where not", () => {
    const choices = [choice("C1", "Ann"), choice("C3", "Ben", { edition: "2018+A2" })];
    const one = comparison({ sets: [{ ...SET, choices }], differences: [0] });
    expect(rendered(one)).toMatch(/Because Ann saw it so\. +Because Ben saw it so\./);
    expect(rendered(one)).toContain("Judged under different editions: 2018+A2, 2018+A4.");
    for (const words of [/gap +12 mm/, /reach +not known/, /bath +does not apply/, /position on small fingers +count/])
      expect(rendered(one)).toMatch(words);
    expect(rendered(one, 40)).toMatch(/Because Ann saw it so\.\n +C3 1 choice/);
  });

  test("shows the newest of many and counts the rest", () => {
    const many = Array.from({ length: 30 }, (_, i) =>
      choice("C2", `Person ${i}`, { date: `2026-01-${10 + (i % 20)}` }),
    );
    const sorted = [...many].sort((a, b) => (a.date < b.date ? -1 : 1));
    const text = rendered(
      comparison({ sets: [{ ...SET, choices: [...sorted, choice("FI", "Zoe")] }], differences: [0] }),
    );
    expect(text).toContain("C2 30 choices");
    expect(text).toContain("and 24 older");
    expect(text).toContain("2026-01-29");
    expect(text).not.toContain("2026-01-10");
  });

  test("names the one fact in which near sets differ, and what they share", () => {
    const text = rendered(
      comparison({
        sets: [
          { ...SET, choices: [choice("C1", "Ann")] },
          { ...SET, facts: SET.facts.slice(1), choices: [choice("C3", "Ben")] },
        ],
        near: [
          {
            differs: { kind: "fact", name: "gap" },
            members: [
              { set: 0, value: "12 mm" },
              { set: 1, value: null },
            ],
          },
        ],
      }),
    );
    expect(text).toContain("1  broken front, alike but for gap");
    expect(text).toContain("- 12 mm");
    expect(text).toContain("- not recorded");
    // What differs is not repeated among what is alike.
    expect(text).not.toMatch(/gap +12 mm/);
  });

  test("gives figures with their interval and what is behind them", () => {
    const kappa: CohenKappa = {
      defined: true,
      value: -0.104,
      observed: 0.5,
      expected: 0.547,
      standardError: 0.2,
      low: -0.496,
      high: 0.288,
      items: 12,
    };
    const flat: CohenKappa = { ...kappa, value: 1, standardError: 0, low: 1, high: 1, items: 10 };
    const agreement: AgreementFigures = {
      ...NOTHING,
      all: { pairs: 1000, agreed: 999 },
      between: { pairs: 300, agreed: 1 },
      varied: 2,
      tied: 1,
      two: [
        { judges: ["Ann", "Ben"], common: 12, kappa, linear: flat, quadratic: flat },
        {
          judges: ["Ann", "Cem"],
          common: 10,
          kappa: { defined: false, because: "one-category-only", items: 10 },
          linear: flat,
          quadratic: flat,
        },
      ],
      notPaired: 3,
    };
    const text = rendered(comparison({ agreement })).replaceAll(/\s+/g, " ");
    expect(text).toContain("pairs of choices 999 of 1000 the same (99 %)");
    expect(text).toContain("by different persons 1 of 300 the same (1 %)");
    expect(text).toContain("−0.10, 95 % interval −0.50 to 0.29, agreement observed 0.50, expected by chance 0.55");
    expect(text).toContain("counting steps none, C3, C2, C1: 1.00; 2 with FI left out");
    expect(text).toContain("Ann – Cem: 10 sets in common not defined: only one classification was ever chosen");
    expect(text).toContain("in 2 cases it was not the only one, and in 1 two were equally usual");
    expect(text).toContain("3 persons with fewer sets in common were not paired.");
  });
});
