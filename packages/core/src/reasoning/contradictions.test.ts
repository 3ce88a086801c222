import { describe, expect, test } from "vitest";
import { type Answer, readAnswers } from "./answers.ts";
import { compile } from "./compile.ts";
import { all, any, atLeast, held, is, no, not, yes } from "./expression.ts";
import { amount, oneKind, ranked, yesNo } from "./fact.ts";
import { reason } from "./reason.ts";
import { says, statementThatHolds } from "./statement.ts";
import type { Subject } from "./subject.ts";

const glance = { effort: "glance" } as const;

/** A bond that is there or not, its state, and how thick it is: what is not there is neither hot nor thick. */
const BOND: Subject = {
  id: "bond",
  facts: {
    there: yesNo({ asks: "There?", ...glance, yes: "it is there", no: "it is not there", worse: "no" }),
    state: ranked({
      asks: "State?",
      ...glance,
      values: { fresh: "it is as new", brown: "it is brown", hot: "it has been hot" },
    }),
    size: amount({ asks: "Size?", effort: "opened", name: "thickness", unit: "metre", worse: "lower" }),
    system: oneKind({ asks: "System?", ...glance, values: { tt: "TT", tn: "TN" } }),
  },
  contested: {
    view: { question: "?", positions: { a: { words: "a", because: "a" }, b: { words: "b", because: "b" } } },
  },
  paths: [],
  departures: [{ when: any(no("there"), is("state", "brown")), words: "not as it should be", regulations: ["1"] }],
  dangers: [{ id: "hot", least: "C2", when: is("state", "hot"), words: "it has been hot", regulations: ["1"] }],
  contradictions: [
    { when: all(no("there"), is("state", "brown", "hot")), words: "what is not there has no colour" },
    { when: all(no("there"), atLeast("size", "4 mm")), words: "what is not there has no thickness" },
  ],
};

const COMPILED = compile(BOND);
const said = (facts: Readonly<Record<string, Answer>>) => reason(COMPILED, readAnswers(COMPILED, { facts }).knowledge);

describe("what cannot be is left out", () => {
  test("of what is possible, of the answers to a question, and of the changes that decide", () => {
    const gone = said({ there: false });
    expect(gone).toMatchObject({ possible: ["C3"], classification: "C3", ending: "settled", contradictions: [] });
    expect(gone.open).toEqual([]);
    // That it is hot takes that it is there, and then anything may be.
    expect(gone.deciding.up).toEqual([{ facts: { there: "yes" }, possible: 7 }]);
    expect(said({ state: "hot" }).dangers[0]?.holds).toEqual({ truth: "true", because: ["fact state"] });
    expect(said({ size: "6 mm" }).next).toMatchObject({ fact: "state" });
  });

  test("of what shows a rule: a thickness shows that it is there", () => {
    const there = said({ size: "6 mm", state: "fresh" });
    expect(there).toMatchObject({ possible: ["none"], open: [] });
    expect(there.departures[0]?.holds).toEqual({ truth: "false", because: ["fact state", "fact size"] });
  });
});

describe("statements that cannot all be true", () => {
  test("stand with their words, their facts and the ways to settle them, and danger is not passed", () => {
    const both = said({ there: false, state: "hot" });
    expect(both.contradictions).toEqual([{ contradiction: BOND.contradictions?.[0], facts: ["there", "state"] }]);
    expect(both.withdrawals).toEqual([
      { facts: ["there"], possible: ["C2"] },
      { facts: ["state"], possible: ["C3"] },
    ]);
    expect(both).toMatchObject({
      possible: ["C2"],
      classification: "C2",
      ending: "contradicted",
      open: ["there", "state"],
      unsettled: [],
    });
    expect(both.next).toBeUndefined();
  });

  test("are no pass where all of them are harmless", () => {
    expect(said({ there: false, state: "brown" })).toMatchObject({ possible: ["C3"], classification: null });
    expect(said({ there: false, size: "6 mm", state: "fresh" })).toMatchObject({
      possible: ["C3"],
      classification: null,
      ending: "contradicted",
    });
  });

  test("take more than one withdrawal where one fact stands against two", () => {
    expect(said({ there: false, state: "hot", size: "6 mm" }).withdrawals.map(({ facts }) => facts)).toEqual([
      ["there"],
      ["state", "size"],
    ]);
  });

  test("are found where only several contradictions together leave nothing that can be", () => {
    const together: Subject = {
      ...BOND,
      contradictions: [
        { when: all(no("there"), is("system", "tt")), words: "a" },
        { when: all(no("there"), is("system", "tn")), words: "b" },
      ],
    };
    const compiled = compile(together);
    const { contradictions, withdrawals } = reason(
      compiled,
      readAnswers(compiled, { facts: { there: false } }).knowledge,
    );
    expect(contradictions.map(({ facts }) => facts)).toEqual([
      ["there", "system"],
      ["there", "system"],
    ]);
    expect(withdrawals.map(({ facts }) => facts)).toEqual([["there"]]);
  });

  test("let nothing be said to whoever ordered the report", () => {
    const told = (facts: Readonly<Record<string, Answer>>) =>
      statementThatHolds(says("hot", is("state", "hot")), "C2", COMPILED, readAnswers(COMPILED, { facts }).knowledge)
        ?.words;
    expect(told({ state: "hot" })).toBe("hot");
    expect(told({ state: "hot", there: false })).toBeUndefined();
  });
});

test("contradictions of positions, of what is not there, or of everything are refused", () => {
  const wrong = (when: NonNullable<Subject["contradictions"]>[number]["when"]) => () =>
    compile({ ...BOND, contradictions: [{ when, words: "cannot be" }] });
  expect(wrong(held("view", "a"))).toThrow('bond: the contradiction "cannot be" speaks of the point view');
  expect(wrong(yes("nothing"))).toThrow(/fact nothing/);
  expect(wrong(any(yes("there"), not(yes("there"))))).toThrow(/leave nothing that can be true/);
});
