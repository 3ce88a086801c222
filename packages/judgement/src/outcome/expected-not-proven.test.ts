import { CHECKS, type Check, givenFromText } from "@good-grounds/computations";
import { type Finding, Reckoner } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { expectedNotProven } from "./expected-not-proven.ts";

/** The findings of a check's examples that are met by what is expected. */
function expectedOf({ id, needs, conclude, examples }: Check): readonly Finding[] {
  return examples.flatMap(({ given }) => {
    const made = givenFromText(needs, given);
    if (!made.ok) throw new Error(`${id}: ${JSON.stringify(made.issues)}`);
    const { judgement, remarks } = conclude(made.given, new Reckoner(false));
    const isExpected = judgement.verdict === "met" && judgement.grade === "expected";
    return isExpected ? [{ check: id, path: ["supply"], judgement, remarks } as unknown as Finding] : [];
  });
}

const FOUND = (CHECKS as readonly unknown[] as readonly Check[])
  .map((check) => [check.title, expectedOf(check)] as const)
  .filter(([, findings]) => findings.length > 0);

describe("what is met as expected tells what would prove it", () => {
  test("several checks can be", () => {
    expect(FOUND.length).toBeGreaterThanOrEqual(4);
  });
  test.each(FOUND)("%s", (title, findings) => {
    for (const one of findings) {
      const [remark, ...more] = expectedNotProven({ supply: [one], boards: [], circuits: [] } as never);
      expect(more).toEqual([]);
      expect(remark?.words.startsWith(`${title}, 1 place: `)).toBe(true);
      expect(remark?.words).toMatch(/would prove it/);
    }
  });
});
