import { type Ground, nodesOf, Reckoner, UNIT_SYMBOL } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COMPUTATIONS, type Computation } from "./computations.ts";
import { givenFromText } from "./given.ts";
import type { Need } from "./need.ts";

const reckon = new Reckoner(true);

/** Figures that bring arithmetic to its edges: nothing, next to nothing, the usual, and far beyond. */
const FIGURES = ["0", "0.001", "0.35", "1", "6", "16", "30", "45", "80", "230", "2000", "900000"];

function quantity(unit: string): fc.Arbitrary<string> {
  const one = fc.constantFrom(...FIGURES).map((figure) => `${figure} ${unit}`.trim());
  return fc.oneof(
    one,
    fc.tuple(one, one).map(([a, b]) => `${a} to ${b}`),
    fc.tuple(fc.constantFrom(">", "<"), one).map((parts) => parts.join("")),
  );
}

function answer(need: Need): fc.Arbitrary<string | string[]> {
  switch (need.kind) {
    case "quantity":
      return quantity(UNIT_SYMBOL[need.term.unit]);
    case "quantity-list":
      return fc.array(quantity(UNIT_SYMBOL[need.term.unit]), { maxLength: 3 });
    case "word":
      return fc.constantFrom(...need.words);
    case "word-list":
    case "rcd-tests":
      return fc.array(fc.constantFrom<string>(...need.words), { maxLength: 3 });
    case "yes-no":
      return fc.constantFrom("yes", "no");
  }
}

/** Answers to some of the needs: figures from the examples and hostile ones, mixed. */
function given(one: Computation): fc.Arbitrary<Record<string, string | string[]>> {
  const usual = fc.constantFrom(...one.examples.map(({ given: example }) => example));
  const hostile = fc.record(Object.fromEntries(Object.entries(one.needs).map(([name, need]) => [name, answer(need)])), {
    requiredKeys: [],
  });
  return fc
    .tuple(usual, hostile, fc.boolean())
    .map(([example, over, both]) => ({ ...(both ? example : {}), ...over }) as Record<string, string | string[]>);
}

function roots(one: Computation, text: Readonly<Record<string, string | string[]>>): readonly Ground[] {
  const made = givenFromText(one.needs, text);
  if (!made.ok) return [];
  if (!("conclude" in one)) return one.compute(made.given, reckon).results;
  const { judgement, beside, settles = [] } = one.conclude(made.given, reckon);
  return [judgement, ...beside, ...settles];
}

/** What is wrong with the band of a node; undefined where all is well. */
function fault(node: Ground): string | undefined {
  if (!("term" in node) || node.kind === "not-known") return undefined;
  const { kind, term, value, low, high } = node;
  const words = `${kind} ${term.id}: ${low} .. ${value} .. ${high}`;
  if (kind === "lacking") return [value, low, high].every(Number.isNaN) ? undefined : words;
  return low <= value && value <= high ? undefined : words;
}

describe("no computation makes a band that does not hold its value", () => {
  test.each([...COMPUTATIONS.values()].map((one) => [one.id, one] as const))("%s", (_, one) => {
    fc.assert(
      fc.property(given(one), (text) => {
        const faults = roots(one, text).flatMap((root) => [...nodesOf(root)].flatMap((node) => fault(node) ?? []));
        expect(faults, JSON.stringify(text)).toEqual([]);
      }),
      { numRuns: 300, seed: 20_261_130 },
    );
  });
});
