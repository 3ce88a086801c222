import { SEVERITIES, type Severity } from "@good-grounds/core";
import { reasonAbout } from "@good-grounds/judgement";
import { TOPICS, type Topic } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { weighedHouse } from "./rcd-house.ts";

/** Installations that record one value each of a property, and nothing else is known from them. */
const VALUES = ["TN-S", "TN-C-S", "TT", "IT"] as const;
const NOTHING_FOUND = { supply: [], boards: [], circuits: [] };
const RECORDING = [undefined, ...VALUES].map((earthing) => {
  const { installation } = weighedHouse({ rcds: {}, supply: { earthing } });
  return { installation, weighing: NOTHING_FOUND };
});

/** The installation that records nothing of it at 0, else the value of that number. */
function recording(number: number) {
  const found = RECORDING[number];
  if (found === undefined) throw new Error(`no installation ${number}`);
  return found;
}

/** The topic with one fact answered by that property, value by value. */
function recordedFact(topic: Topic, name: string, values: readonly string[]): Topic {
  const fact = topic.facts[name];
  if (fact === undefined) throw new Error(`no fact ${name}`);
  const gives = Object.fromEntries(values.map((value, i) => [(VALUES[i] as string).toLowerCase(), value]));
  // What the file records of other facts is not what is tried here.
  const others = Object.entries(topic.facts).map(([id, { recorded: _, ...one }]) => [id, one as typeof fact] as const);
  const recorded = { property: "earthing-system", gives };
  return { ...topic, facts: { ...Object.fromEntries(others), [name]: { ...fact, recorded } } };
}

const ranks = (possible: readonly Severity[]) => possible.map((severity) => SEVERITIES.indexOf(severity));

/** Every fact that has a few values, of every topic. */
const FACTS = TOPICS.flatMap((topic) =>
  Object.entries(topic.facts).flatMap(([name, fact]) => {
    const values = fact.kind === "yes-no" ? ["yes", "no"] : fact.kind === "choice" ? Object.keys(fact.values) : [];
    return values.length < 2 ? [] : [{ topic, name, values: values.slice(0, VALUES.length) }];
  }),
);

test("there are enough facts to look at", () => {
  expect(FACTS.length).toBeGreaterThan(500);
});

describe.each([...new Set(FACTS.map(({ topic }) => topic))].map((topic) => [topic.id, topic] as const))(
  "%s",
  (_, topic) => {
    test("stated one way and recorded another: both stay possible, and the worse stands", () => {
      for (const { name, values } of FACTS.filter((one) => one.topic === topic)) {
        const asked = recordedFact(topic, name, values);
        const alone = (value: string, i: number) =>
          reasonAbout({ topic: asked, said: i === 0 ? { [name]: value } : {}, at: recording(i) });
        const byStatements = values.map((value) => alone(value, 0));
        const byRecords = values.map((value, i) => alone(value, i + 1));
        for (const [i, known] of values.entries())
          for (const [j, stated] of values.entries()) {
            const one = reasonAbout({
              topic: asked,
              said: { [name]: stated },
              at: recording(i + 1),
            });
            const byStatement = byStatements[j] ?? alone(stated, 0);
            const byRecord = byRecords[i] ?? alone(known, i + 1);
            const place = `${name}: ${stated}, recorded ${known}`;
            expect(
              byRecord.recorded.filter(({ fact }) => fact === name).map(({ value }) => value),
              place,
            ).toEqual([known]);
            if (stated === known) {
              expect(one.against, place).toEqual([]);
              expect(one.reasoning.possible, place).toEqual(byStatement.reasoning.possible);
              continue;
            }
            expect(
              one.against.map((other) => other.stated),
              place,
            ).toEqual([stated]);
            expect(new Set(one.reasoning.possible), place).toEqual(
              new Set([...byStatement.reasoning.possible, ...byRecord.reasoning.possible]),
            );
            const worse = Math.max(
              Math.min(...ranks(byStatement.reasoning.possible)),
              Math.min(...ranks(byRecord.reasoning.possible)),
            );
            expect(SEVERITIES.indexOf(one.least), place).toBe(worse);
            if (one.reasoning.possible.length > 1) expect(one.reasoning.classification, place).toBeNull();
          }
      }
    });
  },
);
