import {
  type Classification,
  type Compiled,
  type Knowledge,
  reason,
  SEVERITIES,
  statementsIn,
  statementThatHolds,
} from "@good-grounds/core";
import { reasonAbout, type TopicReasoning } from "@good-grounds/judgement";
import { clientSentence, REASONING } from "@good-grounds/report";
import { compiledTopic, TOPICS, topicById } from "@good-grounds/topics";
import { gradeOf } from "@good-grounds/topics/laws";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assignments, canBeAt, countOf, holdsAt, severityAt } from "./assignments.ts";
import { CLIENT_CASES, type ClientCase } from "./client-cases.ts";

const SEED = 7671;
/** Every assignment of a topic is tried up to so many; beyond, as many drawn at random. */
const MOST = 1500;

const known = (values: readonly number[]): Knowledge => ({
  masks: values.map((value) => 1 << value),
  beyond: new Set(),
  grounds: new Map(),
});

function drawn({ variables }: Compiled): Iterable<number[]> {
  const masks = variables.map(({ cells }) => 2 ** cells.values.length - 1);
  if (countOf(masks) <= MOST) return assignments(masks);
  return fc.sample(fc.tuple(...variables.map(({ cells }) => fc.nat({ max: cells.values.length - 1 }))), {
    numRuns: MOST,
    seed: SEED,
  });
}

/** What is known of each fact, "beyond the extent" among it, under the more usual positions. */
function drawnWithGaps({ variables }: Compiled): readonly Knowledge[] {
  const one = fc.tuple(
    ...variables.map(({ kind, cells }) =>
      kind === "point"
        ? fc.constant(0)
        : fc.oneof(
            { weight: 2, arbitrary: fc.nat({ max: cells.values.length - 1 }) },
            { weight: 1, arbitrary: fc.constant(-1) },
          ),
    ),
  );
  return fc.sample(one, { numRuns: 150, seed: SEED }).map((values) => ({
    masks: values.map((value, i) => (value < 0 ? 2 ** (variables[i]?.cells.values.length ?? 1) - 1 : 1 << value)),
    beyond: new Set(values.flatMap((value, i) => (value < 0 ? [i] : []))),
    grounds: new Map(),
  }));
}

describe.each(TOPICS.map((one) => [one.id, one] as const))("what a client is told of %s", (_, topic) => {
  test("only under the classification that follows, and only what holds", () => {
    const compiled = compiledTopic(topic);
    for (const values of drawn(compiled)) {
      // Of statements that cannot all be true nothing is said.
      if (!canBeAt(compiled, values)) continue;
      const severity = severityAt(compiled, values);
      for (const classification of SEVERITIES) {
        const statements = topic.client[classification];
        if (statements === undefined) continue;
        const said = statementThatHolds(statements, classification, compiled, known(values));
        if (said !== undefined) expect(holdsAt(compiled, values, said.when), said.words).toBe(true);
        // Danger and departures that follow are never left without a word.
        else if (classification === severity) expect(classification).toBe("none");
        if (said !== undefined && classification !== severity)
          expect(
            viewsOf(compiled, values).map((other) => severityAt(compiled, other)),
            said.words,
          ).toContain(classification);
      }
    }
  });

  test("FI: only what is open is called so, and something can always be said", () => {
    const compiled = compiledTopic(topic);
    const statements = topic.client.FI;
    for (const knowledge of drawnWithGaps(compiled)) {
      const { classification, unsettled } = reason(compiled, knowledge);
      if (classification !== "FI" || statements === undefined) continue;
      const said = statementThatHolds(statements, "FI", compiled, knowledge);
      expect(said).toBeDefined();
      const named = said?.unsettled ?? unsettled.filter((fact) => topic.plain.facts[fact] !== undefined);
      expect(
        named.some((fact) => unsettled.includes(fact)),
        said?.words,
      ).toBe(true);
    }
  });

  test("every sentence under FI says what was not found out, or every fact has plain words for it", () => {
    for (const { words, unsettled } of statementsIn(topic.client.FI ?? [])) {
      if (unsettled === undefined) {
        expect(words, "the rest is composed").not.toMatch(/could not/);
        expect(
          Object.keys(topic.facts).filter((fact) => topic.plain.facts[fact] === undefined),
          words,
        ).toEqual([]);
        for (const plain of Object.values(topic.plain.facts)) {
          const whole = `${words} ${REASONING.couldNotFindOut([plain])} ${REASONING.mustBeLookedAt}`;
          expect(gradeOf(whole), whole).toBeLessThanOrEqual(7);
        }
        continue;
      }
      for (const fact of unsettled) expect(Object.keys(topic.facts), words).toContain(fact);
    }
  });
});

/** The assignment under every combination of positions. */
function viewsOf({ variables }: Compiled, values: readonly number[]): readonly number[][] {
  return [
    ...assignments(
      variables.map(({ kind, cells }, i) =>
        kind === "point" ? 2 ** cells.values.length - 1 : 1 << (values[i] as number),
      ),
    ),
  ];
}

function told({ topic: id, facts, positions = {}, chosen }: ClientCase): string {
  const topic = topicById(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  const one = reasonAbout({ topic, said: facts, positions });
  expect(one.faults).toEqual([]);
  return clientSentence(chosen === undefined ? one : observed(one, chosen));
}

function observed(one: TopicReasoning, chosen: Classification, madeSafe?: string) {
  return {
    ...one,
    observation: "o1",
    chosen,
    choice: "allowed" as const,
    ...(madeSafe === undefined ? {} : { madeSafe }),
  };
}

describe("a sentence that the facts deny is not said", () => {
  test.each(CLIENT_CASES.map((one) => [one.topic, one.untrue, one] as const))("%s: not “%s”", (_, untrue, one) => {
    const words = told(one);
    expect(words).not.toContain(untrue);
    if (one.said === "") expect(words).toBe("");
    else expect(words).toContain(one.said);
  });

  test("there are enough cases, over different topics", () => {
    expect(CLIENT_CASES.length).toBeGreaterThanOrEqual(40);
    expect(new Set(CLIENT_CASES.map(({ topic }) => topic)).size).toBeGreaterThanOrEqual(40);
  });

  test("made safe: what was done is told in place of the danger that was there", () => {
    const topic = topicById("accessory-broken");
    if (topic === undefined) throw new Error("no such topic");
    const one = reasonAbout({
      topic,
      said: { "gets-in": "finger", "cover-fixing": "hole" },
    });
    expect(clientSentence(observed(one, "C1"))).toContain("A finger can touch live metal");
    const words = clientSentence(observed(one, "C1", "The circuit was locked off."));
    expect(words).not.toContain("can touch");
    expect(words).toContain("The circuit was locked off.");
  });

  test("a fact that a computation contradicts counts as not known", () => {
    const topic = topicById("rcd-test-not-possible");
    if (topic === undefined) throw new Error("no such topic");
    const said = { "rcd-operates": true, "button-reach": "covered", "rcd-notice": "there" };
    const about = (more: Readonly<Record<string, string>>) => reasonAbout({ topic, said: { ...said, ...more } });
    expect(about({}).client.C3).toContain("You cannot test the safety switch");
    const { against, client } = about({ standard: "BS EN 61008", delay: "general", "at-rated": ">1999 ms" });
    expect(against).toHaveLength(1);
    expect(client.C3).toBeUndefined();
  });
});
