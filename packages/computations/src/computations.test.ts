import { type Ground, gradeOf, type Judgement, missingOf, nodesOf, Reckoner } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { CALCULATIONS } from "./calculations/index.ts";
import { CHECKS } from "./checks/index.ts";
import { COMPUTATIONS, type Computation } from "./computations.ts";
import { givenFromText } from "./given.ts";
import { LOOKUPS } from "./lookups/index.ts";
import { ASSESSORS } from "./provisions/index.ts";

const withGrounds = new Reckoner(true);
const verdictsOnly = new Reckoner(false);

interface Outcome {
  readonly judgement: Judgement | undefined;
  readonly roots: readonly Ground[];
}

function run(one: Computation, given: Readonly<Record<string, string | readonly string[]>>, reckon: Reckoner): Outcome {
  const made = givenFromText(one.needs, given);
  if (!made.ok) throw new Error(`${one.id}: ${JSON.stringify(made.issues)}`);
  if ("conclude" in one) {
    const { judgement, beside } = one.conclude(made.given, reckon);
    return { judgement, roots: [judgement, ...beside] };
  }
  return { judgement: undefined, roots: one.compute(made.given, reckon).results };
}

test("every computation has an id of its own", () => {
  expect(COMPUTATIONS.size).toBe(CHECKS.length + CALCULATIONS.length + LOOKUPS.length + ASSESSORS.length);
});

describe.each([...COMPUTATIONS.values()].map((one) => [one.id, one] as const))("%s", (_, one) => {
  test("says what it is and has examples with a source", () => {
    expect(one.title.length).toBeGreaterThan(5);
    expect(one.formula.length).toBeGreaterThan(2);
    expect(one.examples.length).toBeGreaterThan(0);
    for (const example of one.examples) expect(example.source.length).toBeGreaterThan(5);
  });

  test("with nothing given is open and never met", () => {
    const { judgement, roots } = run(one, {}, withGrounds);
    if (judgement !== undefined) expect(["not-known", "not-applicable"]).toContain(judgement.verdict);
    else for (const root of roots) expect(["not-known", "lacking"]).toContain(root.kind);
  });

  test.each(one.examples.map((example) => [example.name, example] as const))("example: %s", (_, example) => {
    const { judgement, roots } = run(one, example.given, withGrounds);
    if (example.verdict !== undefined) expect(judgement?.verdict).toBe(example.verdict);
    if (example.grade !== undefined) expect(judgement && gradeOf(judgement)).toBe(example.grade);
    const nodes = roots.flatMap((root) => [...nodesOf(root)]);
    for (const [id, { value, within }] of Object.entries(example.values ?? {})) {
      const found = nodes.flatMap((node) =>
        "term" in node && node.term.id === id && "value" in node ? [node.value] : [],
      );
      expect(found.length, `${id} appears in the result`).toBeGreaterThan(0);
      const nearest = Math.min(...found.map((one) => Math.abs(one - value)));
      expect(nearest, `${id}: ${found.join(", ")}, expected ${value}`).toBeLessThanOrEqual(within);
    }
    const missing = roots
      .flatMap((root) => missingOf(root))
      .map((leaf) => (leaf.kind === "not-known" ? leaf.term.id : leaf.matter.id));
    for (const id of example.missing ?? []) expect(missing).toContain(id);
  });

  test.each(one.examples.map((example) => [example.name, example] as const))(
    "says that it is expected where it rests on what is expected: %s",
    (_, example) => {
      const { roots } = run(one, example.given, withGrounds);
      for (const node of roots.flatMap((root) => [...nodesOf(root)])) {
        if (node.kind !== "compared") continue;
        const isExpected = node.from.some((side) => [...nodesOf(side)].some(({ kind }) => kind === "expected"));
        expect(node.grade, node.matter.id).toBe(isExpected ? "expected" : "proven");
      }
    },
  );

  test.each(one.examples.map((example) => [example.name, example] as const))("without grounds: %s", (_, example) => {
    const kept = run(one, example.given, withGrounds);
    const bare = run(one, example.given, verdictsOnly);
    expect(bare.judgement?.verdict).toBe(kept.judgement?.verdict);
    expect(bare.judgement?.margin).toEqual(kept.judgement?.margin);
    expect(bare.judgement?.grade).toBe(kept.judgement?.grade);
  });
});
