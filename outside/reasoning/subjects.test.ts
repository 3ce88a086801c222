import { describe, expect, test } from "vitest";
import { rcd, reasonedIn } from "./rcd-house.ts";
import { reasonedInExample } from "./reasoned-example.ts";

const answers = (one: { readonly worked: readonly { readonly fact: string; readonly value: string | null }[] }) =>
  Object.fromEntries(one.worked.map(({ fact, value }) => [fact, value]));

describe("an RCD spoken of", () => {
  const works = rcd("30 mA", "works");
  const dead = rcd("30 mA", "dead");
  const topic = "rcd-does-not-trip";

  test("at its circuit, where it stands in the board ahead of the circuit", () => {
    const one = reasonedIn({
      rcds: { board: dead },
      observation: { topic, board: "b", circuit: "c", facts: {} },
    });
    expect(answers(one)).toMatchObject({ "rcd-operates": "no" });
  });

  test("at its circuit, where it is the circuit's own: one of the board before it says nothing of it", () => {
    const one = reasonedIn({
      rcds: { circuit: dead, board: works },
      observation: { topic, board: "b", circuit: "c", facts: {} },
    });
    expect(answers(one)).toMatchObject({ "rcd-operates": "no" });
    expect(one.differing).toEqual([]);
  });

  test("at the board without saying which: open where the board has one of each", () => {
    const one = reasonedIn({ rcds: { board: works, circuit: dead }, observation: { topic, board: "b", facts: {} } });
    expect(answers(one)).toEqual({});
    expect(one.differing.map(({ fact, answers }) => [fact, answers.map(({ value }) => value).sort()])).toEqual([
      ["rcd-operates", ["no", "yes"]],
      ["button", ["no", "yes"]],
    ]);
    expect(one.reasoning.open).toContain("rcd-operates");
  });

  test("at the board: answered where all of them say the same", () => {
    const one = reasonedIn({ rcds: { board: dead, circuit: dead }, observation: { topic, board: "b", facts: {} } });
    expect(answers(one)).toMatchObject({ "rcd-operates": "no" });
  });

  test("at the board, named: answered by that one", () => {
    const named = [{ check: "rcd-time", part: "main" }];
    const one = reasonedIn({
      rcds: { board: works, circuit: dead },
      observation: { topic, board: "b", facts: {}, answers: named },
    });
    expect(answers(one)).toMatchObject({ "rcd-operates": "yes" });
    expect(one.worked[0]?.of).toEqual([["boards", 1, "rcds", 0]]);
  });

  test("one that was not tested among others that work leaves it open", () => {
    const untested = rcd("30 mA", "untested");
    const one = reasonedIn({
      rcds: { board: works, circuit: untested },
      observation: { topic, board: "b", facts: {} },
    });
    expect(answers(one)).toEqual({});
    expect(one.differing).toEqual([]);
  });
});

describe("a bond spoken of", () => {
  const facts = { heat: "none" };
  const sizeOf = (one: ReturnType<typeof reasonedInExample>) => answers(one)["table-size"];

  test("gas at 10 mm² and water at 6 mm², not said which: open, and both are shown", () => {
    const one = reasonedInExample({ topic: "main-bonding-undersized", facts });
    expect(sizeOf(one)).toBeUndefined();
    expect(one.differing.map(({ fact }) => fact)).toEqual(["table-size"]);
    expect(one.differing[0]?.answers.map(({ value, of }) => [value, of?.length]).sort()).toEqual([
      ["no", 1],
      ["yes", 1],
    ]);
  });

  test.each([
    ["gas", "yes"],
    ["water", "no"],
  ])("%s by its id: %s", (part, expected) => {
    const one = reasonedInExample({
      topic: "main-bonding-undersized",
      facts,
      answers: [{ check: "bonding-size", part }],
    });
    expect(sizeOf(one)).toBe(expected);
    expect(one.differing).toEqual([]);
  });

  test("a person who says which it is of two that differ contradicts none of them", () => {
    const one = reasonedInExample({ topic: "main-bonding-undersized", facts: { ...facts, "table-size": false } });
    expect(one.against).toEqual([]);
  });
});
