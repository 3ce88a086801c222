import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readAnswers } from "./answers.ts";
import { compile } from "./compile.ts";
import { Diagram, LEAVES } from "./diagram.ts";
import type { Expression } from "./expression.ts";
import { all, any, atLeast, below, held, is, moreThan, NEVER, no, not, yes } from "./expression.ts";
import { amount, oneKind, ranked, yesNo } from "./fact.ts";
import { cheapest } from "./price-of-asking.ts";
import { nextQuestion } from "./question.ts";
import { reason } from "./reason.ts";
import type { Subject } from "./subject.ts";
import { SEVERITIES } from "./subject.ts";
import { bitsOf, possibleLeaves, sharesOf } from "./survey.ts";

const glance = { effort: "glance" } as const;

/** Two layers before a shock: a cover over a live part, and a lock before the cover. */
const CUPBOARD: Subject = {
  id: "cupboard",
  facts: {
    cover: ranked({
      asks: "Cover?",
      ...glance,
      values: { sound: "the cover is sound", loose: "the cover is loose", off: "the cover is off" },
    }),
    locked: yesNo({ asks: "Locked?", ...glance, yes: "it is locked", no: "it is open", worse: "no" }),
    depth: amount({
      asks: "Depth?",
      effort: "measured",
      name: "depth to the live part",
      unit: "metre",
      worse: "lower",
    }),
    material: oneKind({
      asks: "Material?",
      effort: "opened",
      values: { steel: "it is steel", plastic: "it is plastic" },
    }),
  },
  contested: {
    lock: {
      question: "Does a lock count?",
      positions: { counts: { words: "it does", because: "a" }, "does-not": { words: "it does not", because: "b" } },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches the live part",
      exists: is("material", "steel", "plastic"),
      layers: [
        {
          id: "cover",
          provision: "barrier-or-enclosure",
          words: "the cover",
          gone: is("cover", "off"),
          sound: all(is("cover", "sound"), atLeast("depth", "80 mm")),
        },
        {
          id: "lock",
          provision: "restricted-access",
          words: "the lock",
          gone: any(no("locked"), held("lock", "does-not")),
          sound: NEVER,
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("cover", "loose", "off"), is("material", "plastic")),
      words: "not as it should be",
      regulations: ["416.2.3"],
    },
  ],
};

const SUBJECT = compile(CUPBOARD);
const asked = (
  facts: Record<string, boolean | string | { notKnown: "limited" | "absent"; reason: string }>,
  positions: Record<string, string> = {},
) => {
  const { knowledge, faults } = readAnswers(SUBJECT, { facts, positions });
  expect(faults).toEqual([]);
  return reason(SUBJECT, knowledge);
};

describe("layers left", () => {
  test.each([
    ["off", false, ["C1"]],
    ["off", true, ["C2"]],
    ["loose", false, ["C2"]],
    ["loose", true, ["C3"]],
  ] as const)("cover %s, locked %s", (cover, locked, possible) => {
    expect(asked({ cover, locked, depth: "20 mm", material: "steel" }).possible).toEqual(possible);
  });

  test("a sound layer is enough by itself", () => {
    expect(asked({ cover: "sound", locked: false, depth: "80 mm", material: "steel" }).possible).toEqual(["none"]);
    expect(asked({ cover: "sound", locked: false, depth: "79.9 mm", material: "steel" }).possible).toEqual(["C2"]);
  });

  test("a departure alone is C3", () => {
    expect(asked({ cover: "sound", locked: true, depth: "80 mm", material: "plastic" }).possible).toEqual(["C3"]);
  });

  test("a position changes what a layer is worth, and both are shown", () => {
    const facts = { cover: "off", locked: true, depth: "20 mm", material: "steel" };
    expect(asked(facts, { lock: "does-not" }).possible).toEqual(["C1"]);
    const { contested, underAnyView } = asked(facts);
    expect(underAnyView).toEqual(["C2", "C1"]);
    expect(contested[0]?.positions.map(({ possible }) => bitsOf(possible).map((leaf) => SEVERITIES[leaf]))).toEqual([
      ["C2"],
      ["C1"],
    ]);
  });
});

describe("danger by itself", () => {
  const whole = { cover: "sound", locked: true, depth: "80 mm", material: "steel" };
  const dangerous = compile({
    ...CUPBOARD,
    facts: {
      ...CUPBOARD.facts,
      warm: yesNo({ asks: "Warm?", ...glance, yes: "it is warm", no: "it is cool", worse: "yes" }),
    },
    dangers: [{ id: "warm", least: "C2", when: yes("warm"), words: "it is warm", regulations: ["526.1"] }],
  });
  const said = (facts: Record<string, boolean | string | { notKnown: "limited"; reason: string }>) =>
    reason(dangerous, readAnswers(dangerous, { facts }).knowledge);

  test("stands whatever else is said, and a worse route still counts", () => {
    expect(said({ ...whole, warm: false }).possible).toEqual(["none"]);
    expect(said({ ...whole, warm: true })).toMatchObject({ possible: ["C2"], classification: "C2" });
    expect(said({ warm: true }).possible).toEqual(["C2", "C1"]);
    expect(said({ ...whole, cover: "off", locked: false, warm: true }).possible).toEqual(["C1"]);
  });

  test("is part of the argument with the facts that show it", () => {
    const { dangers } = said({ ...whole, warm: true });
    expect(dangers.map(({ danger, holds }) => [danger.id, holds.truth, holds.because])).toEqual([
      ["warm", "true", ["fact warm"]],
    ]);
  });

  test("is asked for while it is open, is FI where it cannot be settled, and decides", () => {
    const open = said(whole);
    expect(open.possible).toEqual(["none", "C2"]);
    expect(open.next?.fact).toBe("warm");
    expect(said({ ...whole, warm: { notKnown: "limited", reason: "sealed" } }).classification).toBe("FI");
    expect(said({ ...whole, warm: true }).deciding.down).toEqual([{ facts: { warm: "no" }, possible: 1 }]);
    expect(said({ ...whole, warm: false }).deciding.up).toContainEqual({ facts: { warm: "yes" }, possible: 4 });
  });

  test("that speaks of what is not there is refused", () => {
    const wrong = { id: "x", least: "C2", when: yes("nothing"), words: "w", regulations: [] } as const;
    expect(() => compile({ ...CUPBOARD, dangers: [wrong] })).toThrow(/fact nothing/);
  });
});

test("an answer of an earlier file counts as what it meant", () => {
  const finer = compile({
    ...CUPBOARD,
    facts: {
      ...CUPBOARD.facts,
      cover: ranked({
        asks: "Cover?",
        ...glance,
        values: { sound: "the cover is sound", loose: "the cover is loose", off: "the cover is off" },
        formerly: { yes: "loose", no: "sound" },
      }),
    },
  });
  const maskOf = (cover: boolean | string) => readAnswers(finer, { facts: { cover } }).knowledge.masks[0];
  expect(maskOf(true)).toBe(maskOf("loose"));
  expect(maskOf(false)).toBe(maskOf("sound"));
  expect(maskOf("no | off")).toBe(maskOf("sound | off"));
  expect(readAnswers(finer, { facts: { cover: "maybe" } }).faults).toHaveLength(1);
});

describe("what is not known", () => {
  test("a band across a limit leaves both sides possible", () => {
    expect(asked({ cover: "sound", locked: false, depth: "70 mm to 90 mm", material: "steel" }).possible).toEqual([
      "none",
      "C2",
    ]);
  });

  test("several values leave what any of them gives", () => {
    expect(asked({ cover: "loose | off", locked: false, depth: "20 mm", material: "steel" }).possible).toEqual([
      "C2",
      "C1",
    ]);
  });

  test("nothing said is nothing excluded", () => {
    expect(asked({}).possible).toEqual(["none", "C3", "C2", "C1"]);
    expect(asked({}).classification).toBeNull();
  });

  test("FI follows only where danger is possible, less is too, and the fact cannot be settled", () => {
    const cannot = { notKnown: "limited", reason: "could not be opened" } as const;
    expect(asked({ cover: cannot, locked: false, depth: "80 mm", material: "steel" }).classification).toBe("FI");
    expect(
      asked({ cover: { notKnown: "absent", reason: "" }, locked: false, depth: "80 mm", material: "steel" })
        .classification,
    ).toBeNull();
    // Not settled, but no danger among what is possible.
    expect(asked({ cover: "loose", locked: true, depth: "80 mm", material: cannot }).classification).toBe("C3");
    expect(asked({ cover: "sound", locked: true, depth: "80 mm", material: cannot }).classification).toBeNull();
    // Danger either way: at least C2 stands.
    expect(asked({ cover: "off", locked: cannot, depth: "20 mm", material: "steel" })).toMatchObject({
      possible: ["C2", "C1"],
      classification: "C2",
      unsettled: ["locked"],
    });
  });
});

describe("answers", () => {
  test("everything wrong is reported at once, with what was expected", () => {
    const { faults } = readAnswers(SUBJECT, {
      facts: { cover: "missing", locked: "maybe", depth: "5 kg", colour: "red", material: true },
      positions: { lock: "perhaps", key: "counts" },
    });
    expect(faults.map(({ code, name }) => `${code} ${name}`)).toEqual([
      "not-a-value cover",
      "not-a-value locked",
      "not-a-quantity depth",
      "unknown-fact colour",
      "not-a-value material",
      "not-a-value lock",
      "unknown-point key",
    ]);
  });

  test("names every object has are no facts", () => {
    const { faults } = readAnswers(SUBJECT, { facts: { constructor: true, toString: "yes" } });
    expect(faults.map(({ code }) => code)).toEqual(["unknown-fact", "unknown-fact"]);
  });

  test.each(["90 mm to 80 mm", "<20 mm to 30 mm", "1 m to", "-"])("%s is no quantity", (depth) => {
    expect(readAnswers(SUBJECT, { facts: { depth } }).faults).toHaveLength(1);
  });

  test("the same length in another unit, and a display at the end of its range", () => {
    expect(asked({ cover: "sound", locked: false, depth: "0.08 m", material: "steel" }).possible).toEqual(["none"]);
    expect(asked({ cover: "sound", locked: false, depth: ">90 mm", material: "steel" }).possible).toEqual(["none"]);
    expect(asked({ cover: "sound", locked: false, depth: ">70 mm", material: "steel" }).possible).toEqual([
      "none",
      "C2",
    ]);
  });
});

test("a rule that speaks of what is not there is refused when the subject is built", () => {
  const wrong = (when: Expression) => () =>
    compile({ ...CUPBOARD, departures: [{ when, words: "w", regulations: [] }] });
  expect(wrong(yes("nothing"))).toThrow(/fact nothing/);
  expect(wrong(is("cover", "purple"))).toThrow(/purple/);
  expect(wrong(moreThan("depth", "5 A"))).toThrow(/5 A/);
  expect(wrong(atLeast("cover", "5 mm"))).toThrow(/not a quantity/);
  expect(wrong(held("lock", "never"))).toThrow(/never/);
});

/** Subjects of any shape over three facts of two or three values, an amount and a contested point. */
const leaf = fc.constantFrom<Expression>(
  yes("a"),
  no("a"),
  is("b", "x"),
  is("b", "y", "z"),
  is("c", "p", "q"),
  atLeast("d", "5 mm"),
  moreThan("d", "5 mm"),
  below("d", "9 mm"),
  held("v", "one"),
);
const rule = fc.letrec<{ rule: Expression }>((tie) => ({
  rule: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    leaf,
    fc.array(tie("rule"), { maxLength: 3 }).map((of) => all(...of)),
    fc.array(tie("rule"), { maxLength: 3 }).map((of) => any(...of)),
    tie("rule").map(not),
  ),
})).rule;
const subjects = fc.record({ exists: rule, gone: rule, sound: rule, goneToo: rule, when: rule }).map(
  ({ exists, gone, sound, goneToo, when }): Subject => ({
    id: "any",
    facts: {
      a: yesNo({ asks: "a", ...glance, yes: "y", no: "n", worse: "yes" }),
      b: ranked({ asks: "b", effort: "opened", values: { x: "x", y: "y", z: "z" } }),
      c: oneKind({ asks: "c", effort: "measured", values: { p: "p", q: "q", r: "r" } }),
      d: amount({ asks: "d", effort: "measured", name: "d", unit: "metre", worse: "higher" }),
    },
    contested: {
      v: { question: "v", positions: { one: { words: "1", because: "" }, two: { words: "2", because: "" } } },
    },
    paths: [
      {
        id: "p",
        hazard: "burns-or-fire",
        route: "r",
        exists,
        layers: [
          { id: "l", provision: "insulation", words: "l", gone, sound },
          { id: "m", provision: "isolation", words: "m", gone: goneToo, sound: NEVER },
        ],
      },
    ],
    departures: [{ when, words: "w", regulations: ["1"] }],
  }),
);

test("whatever the subject: a question is asked exactly while an answer can settle something, and shares add up", () => {
  fc.assert(
    fc.property(subjects, fc.array(fc.nat(), { minLength: 5, maxLength: 5 }), (subject, picks) => {
      const compiled = compile(subject);
      const masks = compiled.variables.map(({ kind, cells }, i) => {
        const full = 2 ** cells.values.length - 1;
        return kind === "point" ? 1 << ((picks[i] as number) % cells.values.length) : ((picks[i] as number) % full) + 1;
      });
      const knowledge = { masks, beyond: new Set<number>(), grounds: new Map() };
      const possible = bitsOf(possibleLeaves(compiled, compiled.root, masks));
      const question = nextQuestion(compiled, knowledge);
      expect(question === undefined).toBe(possible.length === 1);
      const shares = sharesOf(compiled, compiled.root, masks);
      expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      expect(shares.flatMap((share, i) => (share > 0 ? [i] : []))).toEqual(possible);
      // The answers of a question together leave what was possible before it.
      if (question !== undefined)
        expect(bitsOf(question.leaves.reduce((bits, { possible: after }) => bits | after, 0))).toEqual(possible);
      expect(cheapest(compiled, compiled.root, knowledge, () => 1).price).toBeLessThanOrEqual(
        compiled.variables.length,
      );
    }),
  );
});

describe("diagrams", () => {
  test("equal functions are one number, however they were built", () => {
    const diagram = new Diagram([2, 3, 2]);
    const [a, b] = [diagram.among(0, [1]), diagram.among(1, [0, 2])];
    const and = (x: number, y: number) => Math.min(x, y);
    const or = (x: number, y: number) => Math.max(x, y);
    const flip = (x: number) => 1 - x;
    const direct = diagram.apply(and, a, b);
    const throughNot = diagram.map(flip, diagram.apply(or, diagram.map(flip, a), diagram.map(flip, b)));
    expect(direct).toBe(throughNot);
    expect(diagram.support(direct)).toEqual([0, 1]);
    expect(diagram.restrict(direct, 0, 0)).toBe(0);
    expect(diagram.at(direct, [1, 2, 0])).toBe(1);
    expect(diagram.variableOf(direct)).toBeLessThan(LEAVES);
  });

  test("a subject too large to decide is refused rather than left to grow", () => {
    // Sums of products whose pairs lie far apart double with every pair.
    const pairs = 18;
    const diagram = new Diagram(new Array(2 * pairs).fill(2));
    const build = () =>
      Array.from({ length: pairs }, (_, i) => i).reduce(
        (sum, i) =>
          diagram.apply(
            (x, y) => Math.max(x, y),
            sum,
            diagram.apply((x, y) => Math.min(x, y), diagram.among(i, [1]), diagram.among(i + pairs, [1])),
          ),
        0,
      );
    expect(build).toThrow(RangeError);
  });
});
