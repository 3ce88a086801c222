import { readFileSync } from "node:fs";
import type { Classification } from "@good-grounds/core";
import { reasonAbout } from "@good-grounds/judgement";
import { topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { READINGS, type Reading } from "./agreement.ts";

interface Given {
  readonly id: string;
  readonly situation: string;
  readonly classification: Classification;
  readonly contested: boolean;
  readonly alternatives: readonly { readonly classification: Classification; readonly condition: string }[];
}

/** Observations of the trade with the more usual classification and what a competent inspector may say instead. */
const { cases } = JSON.parse(readFileSync(new URL("data/observations.json", import.meta.url), "utf8")) as {
  readonly cases: readonly Given[];
};

function classified({ topic, facts, positions = {} }: Reading): Classification | null {
  const subject = topicById(topic);
  if (subject === undefined) throw new Error(`no topic ${topic}`);
  const { reasoning, faults } = reasonAbout({ topic: subject, said: facts, positions });
  expect(faults).toEqual([]);
  return reasoning.classification;
}

describe("agreement with the trade", () => {
  test("every given observation is read", () => {
    expect(Object.keys(READINGS).sort()).toEqual(cases.map(({ id }) => id).sort());
  });

  test.each(cases.map((one) => [one.id, one.classification, one] as const))("%s: %s", (id, classification) => {
    expect(classified(READINGS[id] as Reading)).toBe(classification);
  });

  const alternatives = cases.flatMap(({ id, alternatives: others }) =>
    others.map(({ classification, condition }) => [id, classification, condition] as const),
  );
  test.each(alternatives)("%s: %s where %s", (id, classification) => {
    const reading = READINGS[id];
    const other = reading?.alternatives?.[classification];
    if (reading === undefined || other === undefined)
      throw new Error(`${id}: no reading of the alternative ${classification}`);
    const { facts = {}, positions = {} } = other;
    const changed = {
      ...reading,
      facts: { ...reading.facts, ...facts },
      positions: { ...reading.positions, ...positions },
    };
    expect(classified(changed)).toBe(classification);
  });
});
