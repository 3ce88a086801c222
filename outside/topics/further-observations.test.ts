import type { Answer } from "@good-grounds/core";
import { reasonAbout } from "@good-grounds/judgement";
import { topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { FURTHER_OBSERVATIONS } from "./further-observations.ts";

function classified(
  topic: string,
  facts: Readonly<Record<string, Answer>>,
  positions: Readonly<Record<string, string>> = {},
) {
  const subject = topicById(topic);
  if (subject === undefined) throw new Error(`no topic ${topic}`);
  const { reasoning, faults } = reasonAbout({ topic: subject, said: facts, positions });
  expect(faults).toEqual([]);
  return reasoning.classification;
}

const CASES = Object.entries(FURTHER_OBSERVATIONS);

describe("further observations, by common practice", () => {
  test.each(CASES.map(([id, one]) => [id, one.usual, one] as const))("%s: %s", (_, usual, { topic, facts }) => {
    expect(classified(topic, facts)).toBe(usual);
  });

  const others = CASES.flatMap(([id, one]) =>
    Object.entries(one.alternatives ?? {}).map(([other, how]) => [id, other, how.condition, { one, how }] as const),
  );
  test.each(others)("%s: %s where %s", (_id, other, _condition, { one, how }) => {
    expect(classified(one.topic, { ...one.facts, ...how.facts }, how.positions)).toBe(other);
  });
});
