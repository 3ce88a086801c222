import { readFileSync } from "node:fs";
import { ASSESSORS, givenFromText } from "@good-grounds/computations";
import { Reckoner } from "@good-grounds/core";
import { expect, test } from "vitest";

/** A case of the trade: what was seen, in the words of an assessor's needs, and whether the provision holds. */
interface ProvisionCase {
  readonly case: string;
  readonly facts: string;
  readonly assessor: string;
  readonly given: Readonly<Record<string, string | readonly string[]>>;
  readonly holds: boolean;
  readonly beside?: Readonly<Record<string, string>>;
}

const CASES: readonly ProvisionCase[] = JSON.parse(readFileSync(new URL("data/cases.json", import.meta.url), "utf8"));

test.each(CASES.map((one) => [one.case, one.facts, one] as const))("%s: %s", (_, _facts, one) => {
  const assessor = ASSESSORS.find(({ id }) => id === one.assessor);
  if (assessor === undefined) throw new Error(`no assessor is called ${one.assessor}`);
  const made = givenFromText(assessor.needs, one.given);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  const { judgement, beside } = assessor.conclude(made.given, new Reckoner(true));
  expect(judgement.verdict).toBe(one.holds ? "met" : "not-met");
  for (const [about, verdict] of Object.entries(one.beside ?? {})) {
    expect(beside.find(({ matter }) => matter.id === about)?.verdict).toBe(verdict);
  }
});
