import { readdirSync } from "node:fs";
import { type Compiled, possibleSeverities, readAnswers, severitiesOf } from "@good-grounds/core";
import { compiledTopic, topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import type { SameClass } from "./same-class/row.ts";
import { CLASSES_OF_STATE, SITUATIONS } from "./situations.ts";

/** Every list of rows in the folder: a part of the installation has one of its own. */
const ROWS = await gathered();

async function gathered(): Promise<readonly SameClass[]> {
  const folder = new URL("./same-class/", import.meta.url);
  const modules = await Promise.all(readdirSync(folder).map((name) => import(new URL(name, folder).href)));
  return modules.flatMap((one: Readonly<Record<string, readonly SameClass[]>>) => Object.values(one).flat());
}

function compiledOf(id: string): Compiled {
  const topic = topicById(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return compiledTopic(topic);
}

describe("one state of things has one class, whatever the topic", () => {
  test.each(ROWS.map((row) => [row.topic, row.situation, row] as const))("%s: %s", (id, words, row) => {
    const situation = SITUATIONS.find((one) => one.words === words);
    if (situation === undefined) throw new Error(`no situation "${words}"`);
    const compiled = compiledOf(id);
    const { facts, positions = situation.positions ?? {} } = row;
    const { knowledge, faults } = readAnswers(compiled, { facts, positions });
    expect(faults).toEqual([]);
    const possible = severitiesOf(possibleSeverities(compiled, knowledge.masks));
    for (const severity of possible) expect(CLASSES_OF_STATE[situation.state]).toContain(severity);
  });
});
