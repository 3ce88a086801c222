import {
  ALWAYS,
  all,
  compile,
  is,
  no,
  ranked,
  readAnswers,
  reason,
  type Subject,
  yes,
  yesNo,
} from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { headline, type ReasonedTopic, reasoningParts } from "./reasoning.ts";

const glance = { effort: "glance" } as const;

const BOND: Subject & { readonly title: string } = {
  id: "bond",
  title: "A bond",
  facts: {
    there: yesNo({ asks: "Is it there?", ...glance, yes: "it is there", no: "it is not there", worse: "no" }),
    state: ranked({ asks: "How is it?", ...glance, values: { good: "it is as new", hot: "it has been hot" } }),
    marked: yesNo({ asks: "Is it marked?", ...glance, yes: "it is marked", no: "it is not marked", worse: "no" }),
  },
  contested: {},
  paths: [],
  departures: [{ when: no("marked"), words: "it bears no notice", regulations: ["514.13.1"] }],
  dangers: [{ id: "hot", least: "C2", when: is("state", "hot"), words: "it has been hot", regulations: ["526.1"] }],
  contradictions: [{ when: all(no("there"), is("state", "hot")), words: "what is not there has not been hot" }],
};

function reasoned(facts: Parameters<typeof readAnswers>[1]["facts"], subject = BOND): ReasonedTopic {
  const compiled = compile(subject);
  const { knowledge, faults } = readAnswers(compiled, { facts });
  expect(faults).toEqual([]);
  return {
    topic: subject,
    reasoning: reason(compiled, knowledge),
    client: {},
    notFoundOut: [],
    worked: [],
    recorded: [],
    against: [],
    differing: [],
    remedies: [],
  };
}

const sealed = { notKnown: "limited", reason: "sealed" } as const;

describe("what follows, in one line", () => {
  test.each([
    [{ state: "good", marked: true }, "Follows from the facts: no classification"],
    [
      { state: "good", marked: sealed },
      "Follows from the facts: C3 or no classification, nothing dangerous either way",
    ],
    [{ there: true, state: sealed, marked: true }, "Follows from the facts: FI, danger cannot be ruled out"],
    [{ state: "good" }, "Still possible: no classification or C3"],
    [{ there: false, state: "hot" }, "What was stated cannot all be true; until that is settled, C2 at the least"],
  ])("%j: %s", (facts, words) => {
    expect(headline(reasoned(facts))).toContain(words);
  });

  test("is nothing where the statements that contradict each other show no danger", () => {
    const harmless = {
      ...BOND,
      contradictions: [{ when: all(no("there"), yes("marked")), words: "no mark on nothing" }],
    };
    expect(headline(reasoned({ there: false, marked: true, state: "good" }, harmless))).toBe(
      "Nothing follows yet: what was stated cannot all be true",
    );
  });
});

test("a contradiction comes first, with the statements it is about and what taking one back would leave", () => {
  const [first, ...rest] = reasoningParts(reasoned({ there: false, state: "hot", marked: true }));
  expect(first?.heading).toBe("Cannot all be true");
  expect(first?.lines.map(({ depth, words }) => [depth, words])).toEqual([
    [0, "What is not there has not been hot"],
    [1, "it is not there"],
    [1, "it has been hot"],
    [0, "If this is taken back: Is it there? → C2"],
    [0, "If this is taken back: How is it? → no classification"],
  ]);
  expect(rest.map(({ heading }) => heading)).not.toContain("Why not C1");
});

test("C3 or none names the fact that is open", () => {
  const parts = reasoningParts(reasoned({ state: "good", marked: sealed }));
  const open = parts.find(({ heading }) => heading === "Cannot be settled within the extent");
  expect(open?.lines.map(({ words }) => words)).toEqual(["Is it marked? (limited: sealed)"]);
});

test("a subject without contradictions shows none", () => {
  const without = { ...BOND, contradictions: [], departures: [{ when: ALWAYS, words: "short", regulations: [] }] };
  expect(reasoningParts(reasoned({ there: false, state: "hot" }, without)).map(({ heading }) => heading)).not.toContain(
    "Cannot all be true",
  );
});
