import { COMPUTATIONS, givenFromText } from "@good-grounds/computations";
import {
  bitsOf,
  type Compiled,
  cheapest,
  compile,
  decidingFacts,
  type Knowledge,
  MOST_CHANGED,
  nextQuestion,
  possibleSeverities,
  Reckoner,
  SEVERITIES,
  settledIn,
} from "@good-grounds/core";
import { compiledTopic, TOPICS, type Topic } from "@good-grounds/topics";
import {
  everythingMatters,
  examplesComeOut,
  type LawSubject,
  noWorseningLowers,
  possibleIsUnion,
  remediesHelp,
  sentencesArePlain,
  sharedToldApart,
  sourcesAreNamed,
  valuesToldApart,
} from "@good-grounds/topics/laws";
import { ownTexts, readLibrary } from "@good-grounds/topics/texts";

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seedOfRun, timesAsMany } from "../seed.ts";
import { assignments, canBeAt, countOf, EXHAUSTIVE, severityAt } from "./assignments.ts";
import { questionsNeeded, questionsOn } from "./questions.ts";

const { documents } = readLibrary(ownTexts());
const SHARED = documents.filter(({ kind }) => kind === "shared");
const documentOf = (id: string) => documents.find((one) => one.kind === "topic" && one.id.text === id) ?? missing(id);
function missing(id: string): never {
  throw new Error(`no text of the topic ${id}`);
}

const fullMasks = ({ variables }: Compiled) => variables.map(({ cells }) => 2 ** cells.values.length - 1);
const usual = ({ variables }: Compiled) =>
  variables.map(({ kind, cells }) => (kind === "point" ? 1 : 2 ** cells.values.length - 1));
const knowing = (masks: readonly number[]): Knowledge => ({ masks, beyond: new Set(), grounds: new Map() });

function drawn(compiled: Compiled, most: number): Iterable<number[]> {
  const masks = fullMasks(compiled);
  if (countOf(masks) <= most) return assignments(masks);
  return fc.sample(fc.tuple(...compiled.variables.map(({ cells }) => fc.nat({ max: cells.values.length - 1 }))), {
    numRuns: most,
    seed: 7671,
  });
}

/** Knowledge in which every variable may be known, half known or not known. */
const someKnowledge = (compiled: Compiled) =>
  fc.tuple(...fullMasks(compiled).map((full) => fc.oneof(fc.constant(full), fc.integer({ min: 1, max: full }))));

describe.each(TOPICS.map((one) => [one.id, one] as const))("topic %s", (id, topic) => {
  const subject = (): LawSubject => ({
    topic,
    document: documentOf(id),
    shared: SHARED,
    compiled: compiledTopic(topic),
  });

  test("its examples come out as stated", () => {
    expect(topic.examples.length).toBeGreaterThanOrEqual(3);
    expect(examplesComeOut(subject())).toEqual([]);
  });

  test("the diagram says what the rules say, one severity for every assignment", () => {
    const compiled = compiledTopic(topic);
    for (const values of drawn(compiled, EXHAUSTIVE))
      expect(SEVERITIES[compiled.diagram.at(compiled.root, values)]).toBe(severityAt(compiled, values));
  });

  test("no worsening of a fact lowers the severity, whatever else is so", () => {
    expect(noWorseningLowers(subject())).toEqual([]);
  });

  test("every two values of its facts are told apart, or it says why both are offered", () => {
    expect(valuesToldApart(topic, documentOf(id))).toEqual([]);
  });

  test("what is possible is the union over every completion", () => {
    expect(possibleIsUnion(subject(), 60 * timesAsMany(), seedOfRun())).toEqual([]);
  });

  test("no statement about something nothing was said of lowers what stands, whether or not it contradicts the rest", () => {
    const compiled = compiledTopic(topic);
    const full = fullMasks(compiled);
    const standing = (masks: readonly number[]) => bitsOf(possibleSeverities(compiled, masks))[0] as number;
    fc.assert(
      fc.property(someKnowledge(compiled), (masks) => {
        const before = standing(masks);
        for (const [variable, mask] of masks.entries())
          if (mask === full[variable])
            for (const value of bitsOf(mask))
              expect(standing(masks.with(variable, 1 << value))).toBeGreaterThanOrEqual(before);
      }),
      { numRuns: 20 },
    );
  });

  test("deciding facts are all the smallest changes, and each is one", () => {
    const compiled = compiledTopic(topic);
    const facts = compiled.variables.flatMap(({ kind }, i) => (kind === "fact" ? [i] : []));
    const someSituation = fc.tuple(
      ...compiled.variables.map(({ kind, cells }) =>
        kind === "point"
          ? fc.nat({ max: cells.values.length - 1 }).map((value) => 1 << value)
          : fc.oneof(
              { weight: 6, arbitrary: fc.nat({ max: cells.values.length - 1 }).map((value) => 1 << value) },
              { weight: 1, arbitrary: fc.constant(2 ** cells.values.length - 1) },
            ),
      ),
    );
    fc.assert(
      fc.property(someSituation, (masks) => {
        const { up, down } = decidingFacts(compiled, knowing(masks));
        const bounds = boundsOf(compiled, masks);
        expect(asText(up)).toEqual(asText(byBruteForce(compiled, masks, facts, (leaf) => leaf > bounds[1])));
        expect(asText(down)).toEqual(asText(byBruteForce(compiled, masks, facts, (leaf) => leaf < bounds[0])));
      }),
      { numRuns: 25 },
    );
  });

  test("asking as the reasoner says never takes more than any fixed order of questions, on average", () => {
    const compiled = compiledTopic(topic);
    const masks = usual(compiled);
    const facts = compiled.variables.flatMap(({ kind }, i) => (kind === "fact" ? [i] : []));
    const one = () => 1;
    if (facts.length > MOST_ENUMERATED) return asksNoMoreOn(drawnCases(compiled), topic, masks, facts);
    const { mean: policy } = questionsNeeded(compiled, masks, (_node, known) => {
      const question = nextQuestion(compiled, knowing(known), one);
      return question === undefined ? undefined : compiled.index.get(`fact ${question.fact}`);
    });
    for (const order of ordersOf(facts)) {
      const { mean: fixed } = questionsNeeded(compiled, masks, (node, known) =>
        order.find((fact) => isOpenMask(known[fact] as number) && compiled.diagram.support(node).includes(fact)),
      );
      expect(policy).toBeLessThanOrEqual(fixed + 1e-9);
    }
    const root = settledIn(compiled, compiled.root, masks);
    if (facts.length <= 8)
      expect(policy).toBeLessThanOrEqual(cheapest(compiled, root, knowing(masks), one).price * 1.1 + 1e-9);
  });

  test("every fact and every contested point can change the outcome", () => {
    expect(everythingMatters(subject())).toEqual([]);
  });

  test("every remedy can lower the severity and none raises it", () => {
    expect(topic.remedies.length).toBeGreaterThan(0);
    expect(remediesHelp(subject())).toEqual([]);
  });

  test("there is a plain sentence for every classification that can follow", () => {
    expect(sentencesArePlain(subject())).toEqual([]);
  });

  test("it says where its rules come from, and is answered by computations that exist", () => {
    expect(sourcesAreNamed(subject())).toEqual([]);
    const links = Object.values(topic.facts).flatMap(({ worked }) =>
      worked === undefined ? [] : [worked, ...(worked.and ?? [])],
    );
    for (const worked of links) {
      const one = COMPUTATIONS.get(worked.by);
      expect(one, worked.by).toBeDefined();
      if (worked.matter === undefined || one === undefined || !("conclude" in one)) continue;
      const settled = one.examples.flatMap(({ given }) => {
        const made = givenFromText(one.needs, given);
        return made.ok ? (one.conclude(made.given, new Reckoner(false)).settles ?? []) : [];
      });
      expect(settled.map(({ matter }) => matter.id)).toContain(worked.matter);
    }
  });
});

test("topics have ids of their own that can stand in an inspection file", () => {
  expect(new Set(TOPICS.map(({ id }) => id)).size).toBe(TOPICS.length);
  for (const { id, facts, contested } of TOPICS)
    for (const name of [id, ...Object.keys(facts), ...Object.keys(contested)])
      expect(name).toMatch(/^[a-z][a-z0-9-]{1,39}$/);
});

function boundsOf(compiled: Compiled, masks: readonly number[]): readonly [number, number] {
  const leaves = bitsOf(possibleSeverities(compiled, masks));
  return [leaves[0] as number, leaves[leaves.length - 1] as number];
}

/** The smallest changes of facts, found by trying all of them in order of length against the rules read directly. */
function byBruteForce(
  compiled: Compiled,
  masks: readonly number[],
  facts: readonly number[],
  wanted: (leaf: number) => boolean,
) {
  const found: { facts: Record<string, string> }[] = [];
  const reaches = (under: readonly number[]) =>
    [...assignments(under)].some(
      (values) => canBeAt(compiled, values) && wanted(SEVERITIES.indexOf(severityAt(compiled, values))),
    );
  const go = (from: number, change: Record<string, string>, under: number[], left: number) => {
    if (found.some((one) => Object.entries(one.facts).every(([name, value]) => change[name] === value))) return;
    if (left === 0) {
      if (reaches(under)) found.push({ facts: { ...change } });
      return;
    }
    for (let i = from; i < facts.length; i++) {
      const variable = facts[i] as number;
      const { name, cells } = compiled.variables[variable] as Compiled["variables"][number];
      for (const [value, word] of cells.values.entries()) {
        if ((masks[variable] as number) & (1 << value)) continue;
        const next = [...under];
        next[variable] = 1 << value;
        go(i + 1, { ...change, [name]: word }, next, left - 1);
      }
    }
  };
  for (let length = 1; length <= Math.min(MOST_CHANGED, 2); length++) go(0, {}, [...masks], length);
  return found;
}

/** Changes of up to two facts, which is what brute force can list, in one order. */
function asText(changes: readonly { readonly facts: Readonly<Record<string, string>> }[]): readonly string[] {
  return changes
    .filter(({ facts }) => Object.keys(facts).length <= 2)
    .map(({ facts }) =>
      Object.entries(facts)
        .map((pair) => pair.join("="))
        .sort()
        .join(" "),
    )
    .sort();
}

/** Beyond so many facts the ways of asking are not gone through but drawn. */
const MOST_ENUMERATED = 8;

/** Drawn situations under the usual positions. */
function drawnCases({ variables }: Compiled): readonly number[][] {
  const one = fc.tuple(
    ...variables.map(({ kind, cells }) => fc.nat({ max: kind === "point" ? 0 : cells.values.length - 1 })),
  );
  return fc.sample(one, { numRuns: 60, seed: 7671 });
}

/** The law of asking on drawn situations. Each order has a diagram of its own, so that none grows without end. */
function asksNoMoreOn(cases: readonly number[][], topic: Topic, masks: readonly number[], facts: readonly number[]) {
  const own = compile(topic);
  const policy = questionsOn(own, masks, cases, (_node, known) => {
    const question = nextQuestion(own, knowing(known), () => 1);
    return question === undefined ? undefined : own.index.get(`fact ${question.fact}`);
  });
  for (const order of ordersOf(facts).slice(0, 20)) {
    const other = compile(topic);
    const fixed = questionsOn(other, masks, cases, (node, known) =>
      order.find((fact) => isOpenMask(known[fact] as number) && other.diagram.support(node).includes(fact)),
    );
    expect(policy).toBeLessThanOrEqual(fixed + 1e-9);
  }
}

const isOpenMask = (mask: number) => (mask & (mask - 1)) !== 0;

/** All orders of up to five facts, else a fixed handful: as listed, reversed, and drawn. */
function ordersOf(facts: readonly number[]): readonly (readonly number[])[] {
  if (facts.length <= 5) return permutations(facts);
  const shuffles = fc.sample(fc.shuffledSubarray([...facts], { minLength: facts.length }), { numRuns: 60, seed: 7671 });
  return [facts, [...facts].reverse(), ...shuffles];
}

function permutations(items: readonly number[]): readonly (readonly number[])[] {
  if (items.length < 2) return [items];
  return items.flatMap((item, i) => permutations(items.filter((_, j) => j !== i)).map((rest) => [item, ...rest]));
}

test.each(SHARED.map((one) => [one.id.text, one] as const))(
  "every two values of the facts of %s are told apart in some topic, or it says why both are offered",
  (_, document) => {
    expect(sharedToldApart(document, TOPICS)).toEqual([]);
  },
);
