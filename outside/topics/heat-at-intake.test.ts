import { reasonAbout } from "@good-grounds/judgement";
import { TOPICS, topicById } from "@good-grounds/topics";
import { expect, test } from "vitest";

test("every topic of the intake asks for heat, and holds what is hot now for danger", () => {
  const intake = TOPICS.filter(({ group }) => group === "intake");
  expect(intake.length).toBeGreaterThanOrEqual(15);
  const without = intake.filter(
    ({ facts, dangers = [] }) =>
      !Object.hasOwn(facts, "heat") || !dangers.some(({ id, least }) => id === "hot-now" && least === "C1"),
  );
  expect(without.map(({ id }) => id)).toEqual([]);
});

test("what smokes at the intake is told in the same words wherever it is found, with whom to call", () => {
  const told = TOPICS.filter(({ group }) => group === "intake").map(({ id }) => [id, clientOfHeat(id)] as const);
  const words = new Set(told.map(([, sentence]) => sentence));
  expect([...words]).toEqual([
    expect.stringMatching(/Get out\. If there is smoke, call 999\. Then call the power network/),
  ]);
});

function clientOfHeat(id: string): string | undefined {
  const topic = topicById(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return reasonAbout({ topic, said: { heat: "now" } }).client.C1;
}
