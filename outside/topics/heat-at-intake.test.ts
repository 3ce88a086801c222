import { TOPICS } from "@good-grounds/topics";
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
