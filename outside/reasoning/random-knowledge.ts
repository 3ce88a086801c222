import type { Answer, Expression, FactOf, Subject } from "@good-grounds/core";
import { leavesOf } from "@good-grounds/core";
import fc from "fast-check";
import { holdsIn, type Known, type Value } from "./twin.ts";

/** What was said of a subject, as a person would write it and as the twin reads it. */
export interface Said {
  readonly facts: Readonly<Record<string, Answer>>;
  readonly positions: Readonly<Record<string, string>>;
  readonly known: Known;
  /** Facts that cannot be settled within the agreed extent. */
  readonly beyond: ReadonlySet<string>;
}

/** Everything that could be so: every value of every fact and every position. */
export function everything(subject: Subject): Known {
  const rules = rulesOf(subject);
  return Object.fromEntries([
    ...Object.entries(subject.facts).map(([name, fact]) => [`fact ${name}`, valuesOf(name, fact, rules)] as const),
    ...Object.entries(subject.contested).map(
      ([name, { positions }]) => [`point ${name}`, Object.keys(positions)] as const,
    ),
  ]);
}

/** Any state of knowledge: told, told as one of several, not said, or not to be found out. */
export function someKnowledge(g: fc.GeneratorValue, subject: Subject): Said {
  const facts: Record<string, Answer> = {};
  const beyond = new Set<string>();
  const full = everything(subject);
  const known: Record<string, readonly Value[]> = { ...full };
  for (const [name, fact] of Object.entries(subject.facts)) {
    const values = full[`fact ${name}`] as readonly Value[];
    const how = g(fc.constantFrom, "told", "told", "one of", "not said", "limited");
    if (how === "limited") {
      facts[name] = { notKnown: "limited", reason: "r" };
      beyond.add(name);
    } else if (how !== "not said") {
      const some = how === "told" ? [g(fc.constantFrom, ...values)] : runOrSome(g, fact, values);
      facts[name] = written(fact, some);
      known[`fact ${name}`] = some;
    }
  }
  const positions = Object.fromEntries(
    Object.entries(subject.contested).map(([name, point]) => [
      name,
      g(fc.constantFrom, ...Object.keys(point.positions)),
    ]),
  );
  for (const [name, position] of Object.entries(positions)) known[`point ${name}`] = [position];
  return { facts, positions, known, beyond };
}

/** Several values; of a quantity those between two. */
function runOrSome(g: fc.GeneratorValue, fact: FactOf, values: readonly Value[]): readonly Value[] {
  if (fact.kind !== "quantity") return g(fc.subarray, [...values], { minLength: 1 });
  const from = g(fc.integer, { min: 0, max: values.length - 1 });
  return values.slice(from, g(fc.integer, { min: from, max: values.length - 1 }) + 1);
}

function written(fact: FactOf, values: readonly Value[]): string {
  return fact.kind === "quantity" ? `${values[0]} mm to ${values[values.length - 1]} mm` : values.join(" | ");
}

/** Every value of a fact that some rule tells from the others; of quantities one number for each side of the limits. */
function valuesOf(name: string, fact: FactOf, rules: readonly Expression[]): readonly Value[] {
  if (fact.kind === "yes-no") return ["no", "yes"];
  if (fact.kind === "choice") return Object.keys(fact.values);
  const tests = rules.flatMap((rule) => [...leavesOf(rule)]).filter((leaf) => "limit" in leaf && leaf.fact === name);
  const seen = new Set<string>();
  return [1, 3, 5, 7, 9].filter((number) => {
    const sides = tests.map((test) => holdsIn(test, { [`fact ${name}`]: number })).join();
    return !seen.has(sides) && seen.add(sides);
  });
}

function rulesOf({ paths, departures, dangers = [], contradictions = [] }: Subject): readonly Expression[] {
  return [
    ...paths.flatMap(({ exists, layers }) => [exists, ...layers.flatMap(({ gone, sound }) => [gone, sound])]),
    ...[...departures, ...dangers, ...contradictions].map(({ when }) => when),
  ];
}
