import { bitsOf, possibleLeaves, readAnswers, ruleIn, SEVERITIES, stateIs } from "@good-grounds/core";
import { compiledTopic, topicById } from "@good-grounds/topics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CLASSES_OF_STATE, SITUATIONS, type Situation, TOUCH_STATES } from "./situations.ts";
import { touchByHand } from "./touch-by-hand.ts";

const topic = topicById("basic-protection");
if (topic === undefined) throw new Error("no topic basic-protection");
const compiled = compiledTopic(topic);
const { diagram, variables } = compiled;

const TOUCH_FACTS = topic.facts;
const TOUCH_POINTS = topic.contested;

/** The state as one function: 0 for its best value. */
const state = TOUCH_STATES.map((value, i) =>
  diagram.map((leaf) => leaf * i, ruleIn(stateIs("basic-protection", value), compiled)),
).reduce((a, b) => diagram.apply(Math.max, a, b), 0);

function possible({ facts, positions = {} }: Pick<Situation, "facts" | "positions">, node = state): readonly string[] {
  const { knowledge, faults } = readAnswers(compiled, { facts, positions });
  expect(faults).toEqual([]);
  return bitsOf(possibleLeaves(compiled, node, knowledge.masks)).map((leaf) =>
    node === state ? (TOUCH_STATES[leaf] ?? "") : (SEVERITIES[leaf] ?? ""),
  );
}

test("every situation is one of its own, in words of its own", () => {
  expect(SITUATIONS.length).toBeGreaterThanOrEqual(60);
  expect(new Set(SITUATIONS.map(({ words }) => words)).size).toBe(SITUATIONS.length);
  expect(SITUATIONS.filter(({ words }) => words.startsWith("the same"))).toEqual([]);
});

describe("situations of touch", () => {
  test("there are enough, each once, of every state", () => {
    const said = SITUATIONS.map(({ facts, positions }) => JSON.stringify([facts, positions]));
    expect(new Set(said).size).toBeGreaterThanOrEqual(60);
    expect(new Set(SITUATIONS.map(({ words }) => words)).size).toBeGreaterThanOrEqual(60);
    for (const one of TOUCH_STATES) expect(SITUATIONS.filter((each) => each.state === one).length).toBeGreaterThan(15);
  });

  test.each(SITUATIONS.map((one) => [one.words, one.state, one] as const))("%s: %s", (_, expected, situation) => {
    expect(possible(situation)).toEqual([expected]);
    for (const severity of possible(situation, compiled.root)) expect(CLASSES_OF_STATE[expected]).toContain(severity);
  });

  test("every position on every point decides some situation or turns one", () => {
    const turned = Object.entries(TOUCH_POINTS).filter(([point, { positions }]) =>
      SITUATIONS.some((one) => {
        const all = Object.keys(positions).map((position) =>
          possible({ facts: one.facts, positions: { ...one.positions, [point]: position } }).join(),
        );
        return new Set(all).size > 1;
      }),
    );
    expect(turned.map(([point]) => point)).toEqual(Object.keys(TOUCH_POINTS));
  });
});

describe("basic protection as one state", () => {
  test("no worsening of a fact makes it better, whatever else is so and whatever is held", () => {
    const falls = variables.flatMap(({ kind, name, cells }, variable) =>
      kind === "fact" && cells.ordered
        ? cells.values.slice(1).flatMap((worse, value) => {
            const [before, after] = [value, value + 1].map((at) => diagram.restrict(state, variable, at));
            const kept = diagram.apply((a, b) => (a <= b ? 1 : 0), before as number, after as number);
            return kept === 1 ? [] : [`${name}: ${cells.values[value]} → ${worse}`];
          })
        : [],
    );
    expect(falls).toEqual([]);
    for (const fact of Object.values(TOUCH_FACTS)) expect(fact.kind === "yes-no" ? fact.worse : "").not.toBeNull();
  });

  test("every fact and every contested point can change it", () => {
    const support = new Set(diagram.support(state).map((variable) => variables[variable]?.name));
    expect([...Object.keys(TOUCH_FACTS), ...Object.keys(TOUCH_POINTS)].filter((name) => !support.has(name))).toEqual(
      [],
    );
  });

  test("counted by hand it is the same, whatever is so", () => {
    const anyCase = fc.tuple(...variables.map(({ cells }) => fc.nat({ max: cells.values.length - 1 })));
    fc.assert(
      fc.property(anyCase, (values) => {
        const now = Object.fromEntries(
          variables.map(({ name, cells }, i) => [name, cells.values[values[i] ?? 0] as string]),
        );
        expect(TOUCH_STATES[diagram.at(state, values)], JSON.stringify(now)).toBe(touchByHand(now));
      }),
      { numRuns: 20_000 },
    );
  });

  test("the layers of the topic count to the state, for every assignment", () => {
    const [path] = compiled.paths;
    const severity = path?.severity ?? -1;
    const same = diagram.apply((leaf, at) => (leaf === [0, 2, 3][at] ? 1 : 0), severity, state);
    expect(
      possibleLeaves(
        compiled,
        same,
        variables.map(({ cells }) => 2 ** cells.values.length - 1),
      ),
    ).toBe(1 << 1);
  });

  test("a value that a state does not have is told", () => {
    expect(() => ruleIn(stateIs("basic-protection", "perhaps"), compiled)).toThrow(
      'basic-protection: "perhaps" is none of holds, one-event, gone',
    );
  });
});

describe("what is not said stays open", () => {
  const BAR = { "live-covering": "bare", "meant-insulated": "no" };
  test("bare metal, and nothing more", () => {
    expect(possible({ facts: { "live-covering": "bare" } })).toEqual(["holds", "one-event", "gone"]);
  });

  test("bare metal a finger reaches, who comes not said", () => {
    const facts = { ...BAR, "gets-in": "finger", "allowed-opening": "no" };
    expect(possible({ facts: { ...facts, "arms-reach": "within", obstacle: "none" } })).toEqual(["one-event", "gone"]);
  });

  test("a lock that nobody tried is not a lock", () => {
    const facts = {
      ...BAR,
      "gets-in": "nothing",
      "cover-fixing": "whole",
      "hinges-carry": "yes",
      "cover-opens": "key",
      "who-comes": "named-keeper",
      "allowed-opening": "no",
      "barrier-behind": "no",
      "arms-reach": "within",
      obstacle: "none",
    };
    expect(possible({ facts })).toEqual(["holds", "one-event"]);
  });
});
