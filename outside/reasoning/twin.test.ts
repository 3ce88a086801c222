import {
  type Change,
  type Compiled,
  compile,
  LAYER_STATES,
  type Reasoning,
  readAnswers,
  reason,
  SEVERITIES,
  type Severity,
  type Subject,
} from "@good-grounds/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { everything, type Said, someKnowledge } from "./random-knowledge.ts";
import { someSubject } from "./random-subject.ts";
import { type Known, type Value, worldsThatCanBe } from "./twin.ts";
import { classificationOf, endingOf, Twin } from "./twin-reasoning.ts";

const numbers = (severities: readonly Severity[]) => severities.map((one) => SEVERITIES.indexOf(one));

interface Case {
  readonly subject: Subject;
  readonly compiled: Compiled;
  readonly said: Said;
  readonly reasoned: Reasoning;
  readonly twin: Twin;
  readonly beyond: readonly string[];
  readonly askable: readonly string[];
}

/** A random subject with random knowledge; `most` worlds are few enough to try them all. */
function someCase(g: fc.GeneratorValue, most: number): Case {
  const subject = someSubject(g);
  const full = everything(subject);
  fc.pre(Object.values(full).reduce((product, values) => product * (values.length + 1), 1) <= most);
  fc.pre(worldsThatCanBe(subject, full).length > 0);
  const said = someKnowledge(g, subject);
  const compiled = compile(subject);
  const { knowledge, faults } = readAnswers(compiled, said);
  expect(faults).toEqual([]);
  const twin = new Twin(subject, said.known);
  const open = twin.facts.filter((key) => (said.known[key]?.length ?? 0) > 1);
  return {
    subject,
    compiled,
    said,
    twin,
    reasoned: reason(compiled, knowledge),
    beyond: open.filter((key) => said.beyond.has(key.slice(5))),
    askable: open.filter((key) => !said.beyond.has(key.slice(5))),
  };
}

const eachCase = (most: number, numRuns: number, holds: (one: Case) => void) =>
  fc.assert(
    fc.property(fc.gen(), (g) => holds(someCase(g, most))),
    { numRuns },
  );

test("possible, under any view, and what stands of routes, layers, departures and dangers", () => {
  eachCase(20_000, 500, ({ reasoned, twin }) => {
    expect(numbers(reasoned.possible)).toEqual(twin.possible());
    expect(numbers(reasoned.underAnyView)).toEqual(twin.underAnyView());
    for (const { path, exists, layers, possible } of reasoned.paths) {
      expect(exists.truth).toBe(twin.truth(path.exists));
      for (const { layer, states } of layers)
        expect(states.map((state) => LAYER_STATES.indexOf(state))).toEqual(twin.layerStates(layer));
      expect(numbers(possible)).toEqual(twin.pathSeverities(path));
    }
    for (const { departure, holds } of reasoned.departures) expect(holds.truth).toBe(twin.truth(departure.when));
    for (const { danger, holds } of reasoned.dangers) expect(holds.truth).toBe(twin.truth(danger.when));
  });
});

test("contested views: every point that changes what is possible, with what each position gives", () => {
  eachCase(20_000, 200, ({ reasoned, subject, twin }) => {
    const expected = Object.entries(subject.contested).flatMap(([point, { positions }]) => {
      const views = Object.keys(positions).map((position) => twin.with({ [`point ${point}`]: [position] }).possible());
      return views.every((one) => one.join() === views[0]?.join()) ? [] : [[point, views]];
    });
    const found = reasoned.contested.map(({ point, positions }) => [
      point,
      positions.map(({ possible }) => bits(possible)),
    ]);
    expect(found).toEqual(expected);
  });
});

test("facts that are missing, the ending and the classification", () => {
  eachCase(1200, 200, ({ reasoned, twin, beyond, askable }) => {
    const possible = twin.possible();
    const isContradicted = twin.isContradicted;
    const open = isContradicted
      ? twin.facts.filter((key) => twin.withdrawals().some(({ facts }) => facts.includes(key)))
      : twin.telling(askable, askable);
    const unsettled = twin.telling(beyond, [...askable, ...beyond]);
    expect(reasoned.open.map((name) => `fact ${name}`)).toEqual(open);
    expect(reasoned.unsettled.map((name) => `fact ${name}`)).toEqual(unsettled);
    const ending = endingOf(possible, open.length > 0, isContradicted);
    expect(reasoned.classification).toBe(classificationOf(possible, ending));
    expect(reasoned.ending).toBe(ending);
  });
});

test("the next question is one that tells, with what each answer leaves, and no other first question costs less", () => {
  eachCase(160, 120, ({ reasoned, compiled, twin, askable }) => {
    const { next } = reasoned;
    const telling = twin.telling(askable, askable);
    expect(next === undefined).toBe(telling.length === 0);
    if (next === undefined) return;
    const key = `fact ${next.fact}`;
    expect(telling).toContain(key);
    const leaves = twin.known[key]?.flatMap((value) => {
      const after = twin.with({ [key]: [value] });
      return after.isContradicted ? [] : [[cellOf(compiled, next.fact, value), after.possible()]];
    });
    expect(next.leaves.map(({ value, possible }) => [value, bits(possible)]).sort()).toEqual(leaves?.sort());
    expect(twin.priceStarting(key, askable)).toBeCloseTo(twin.leastPrice(askable), 9);
  });
});

test("deciding facts are all the smallest changes, with what each leaves possible", () => {
  eachCase(20_000, 200, ({ reasoned, compiled, twin }) => {
    const possible = twin.possible();
    const text = (changes: readonly Known[]) =>
      changes.map((change) => {
        const facts = Object.entries(change).map(([key, [value]]) => [
          key.slice(5),
          cellOf(compiled, key.slice(5), value as Value),
        ]);
        return `${facts.map((pair) => pair.join("=")).sort()} → ${twin.with(change).possible()}`;
      });
    const found = (changes: readonly Change[]) =>
      changes.map(
        ({ facts, possible: after }) =>
          `${Object.entries(facts)
            .map((pair) => pair.join("="))
            .sort()} → ${bits(after)}`,
      );
    const [least = 0] = possible;
    const greatest = possible[possible.length - 1] ?? 0;
    expect(found(reasoned.deciding.up).sort()).toEqual([...text(twin.changes((one) => one > greatest))].sort());
    expect(found(reasoned.deciding.down).sort()).toEqual([...text(twin.changes((one) => one < least))].sort());
  });
});

test("what is shown as the reason shows it: with those facts alone it is still so, and what is open rests on them", () => {
  eachCase(20_000, 350, ({ reasoned, twin }) => {
    if (twin.isContradicted) return;
    const alone = (because: readonly string[]) =>
      twin.with(
        Object.fromEntries(
          Object.keys(twin.full)
            .filter((key) => !because.includes(key))
            .map((key) => [key, twin.full[key] as readonly Value[]]),
        ),
      );
    const rules = [
      ...reasoned.paths.map(({ path, exists }) => [path.exists, exists] as const),
      ...reasoned.departures.map(({ departure, holds }) => [departure.when, holds] as const),
      ...reasoned.dangers.map(({ danger, holds }) => [danger.when, holds] as const),
    ];
    for (const [rule, { truth, because }] of rules) {
      if (truth !== "open") expect(alone(because).truth(rule)).toBe(truth);
      else for (const key of because) expect(twin.known[key]?.length).toBeGreaterThan(1);
    }
    for (const { layers } of reasoned.paths)
      for (const { layer, states, because } of layers)
        if (states.length === 1) expect(alone(because).layerStates(layer)).toEqual(twin.layerStates(layer));
  });
});

test("what contradicts: every way to settle it, and which contradictions are named", () => {
  let seen = 0;
  eachCase(20_000, 200, ({ reasoned, subject, twin }) => {
    const { contradictions, withdrawals } = reasoned;
    const key = (facts: readonly string[]) => [...facts].sort().join();
    expect(withdrawals.map(({ facts, possible }) => `${key(facts)} → ${numbers(possible)}`).sort()).toEqual(
      twin
        .withdrawals()
        .map(({ facts, possible }) => `${key(facts.map((one) => one.slice(5)))} → ${possible}`)
        .sort(),
    );
    expect(contradictions.length > 0).toBe(twin.isContradicted);
    if (!twin.isContradicted) return;
    seen++;
    const certain = (subject.contradictions ?? []).filter(({ when }) => twin.truth(when) === "true");
    if (certain.length > 0) expect(contradictions.map(({ contradiction }) => contradiction)).toEqual(certain);
    // Each way to settle it takes back something that a named contradiction is about.
    for (const { facts } of withdrawals)
      expect(contradictions.some((one) => facts.some((fact) => one.facts.includes(fact)))).toBe(true);
  });
  expect(seen).toBeGreaterThan(20);
});

test("no contradiction passed: a statement about something nothing was said of never lowers what stands", () => {
  let contradicted = 0;
  eachCase(20_000, 200, ({ compiled, said, reasoned, twin, askable }) => {
    const unsaid = askable.filter((key) => twin.known[key]?.length === twin.full[key]?.length);
    for (const key of unsaid)
      for (const value of twin.full[key] ?? []) {
        const answer = typeof value === "number" ? `${value} mm` : value;
        const { knowledge } = readAnswers(compiled, { ...said, facts: { ...said.facts, [key.slice(5)]: answer } });
        const after = reason(compiled, knowledge);
        expect(numbers(after.possible)[0]).toBeGreaterThanOrEqual(numbers(reasoned.possible)[0] ?? 0);
        if (after.ending !== "contradicted") continue;
        contradicted++;
        expect(["C1", "C2", null]).toContain(after.classification);
        // Nothing worse is forgotten either.
        if (reasoned.ending === "contradicted") continue;
        for (const severity of numbers(reasoned.possible))
          if (severity >= (numbers(after.possible)[0] ?? 0)) expect(numbers(after.possible)).toContain(severity);
      }
  });
  expect(contradicted).toBeGreaterThan(20);
});

const bits = (mask: number) => [0, 1, 2, 3].filter((bit) => mask & (1 << bit));

/** What the engine calls the value; a quantity goes by the limits it lies between. */
function cellOf(compiled: Compiled, fact: string, value: Value): string {
  if (typeof value === "string") return value;
  const { knowledge } = readAnswers(compiled, { facts: { [fact]: `${value} mm` } });
  const variable = compiled.index.get(`fact ${fact}`) as number;
  return compiled.variables[variable]?.cells.values[31 - Math.clz32(knowledge.masks[variable] as number)] as string;
}
