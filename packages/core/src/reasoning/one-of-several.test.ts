import { describe, expect, test } from "vitest";
import { type Answer, readAnswers } from "./answers.ts";
import { type Compiled, compile } from "./compile.ts";
import type { Expression } from "./expression.ts";
import { ALWAYS, all, any, is, NEVER, yes } from "./expression.ts";
import { oneKind, ranked, yesNo } from "./fact.ts";
import { cheapest } from "./price-of-asking.ts";
import { reason } from "./reason.ts";
import { statementThatHolds, unsure } from "./statement.ts";
import type { Subject } from "./subject.ts";

const glance = { effort: "glance" } as const;
const cannot = { notKnown: "limited", reason: "sealed" } as const;

const FACTS: Subject["facts"] = {
  kind: oneKind({ asks: "Kind?", ...glance, values: { a: "a", b: "b", c: "c" } }),
  state: ranked({ asks: "State?", ...glance, values: { good: "good", worn: "worn", broken: "broken" } }),
  near: yesNo({ asks: "Near?", ...glance, yes: "near", no: "far", worse: "yes" }),
};

/** C2 where `danger` holds, C3 where `short` does. */
function subject(danger: Expression, short: Expression = NEVER): Compiled {
  return compile({
    id: "any",
    facts: FACTS,
    contested: {},
    paths: [],
    departures: [{ when: short, words: "short", regulations: ["1"] }],
    dangers: [{ id: "d", least: "C2", when: danger, words: "danger", regulations: ["1"] }],
  });
}

const said = (compiled: Compiled, facts: Readonly<Record<string, Answer>>) =>
  reason(compiled, readAnswers(compiled, { facts }).knowledge);

describe("an answer that is one of several", () => {
  test("is settled where no rule tells the several apart", () => {
    const compiled = subject(all(is("kind", "a", "b"), yes("near")));
    expect(said(compiled, { kind: "a | b" })).toMatchObject({ open: ["near"], next: { fact: "near" } });
    expect(said(compiled, { kind: "a | b", near: cannot })).toMatchObject({
      classification: "FI",
      unsettled: ["near"],
    });
  });

  test("makes what only the excluded values bring in no question", () => {
    const compiled = subject(any(all(is("kind", "a"), yes("near")), all(is("kind", "b", "c"), is("state", "broken"))));
    expect(said(compiled, { kind: "b | c" })).toMatchObject({ open: ["state"], next: { fact: "state" } });
    expect(said(compiled, { kind: "b | c", state: cannot })).toMatchObject({ open: [], classification: "FI" });
  });

  test("is asked again while the rest still turns on it, with the answers that are left", () => {
    const compiled = subject(is("kind", "a"));
    const { next, open } = said(compiled, { kind: "a | c" });
    expect(open).toEqual(["kind"]);
    expect(next?.leaves.map(({ value }) => value)).toEqual(["a", "c"]);
  });

  test("shows a rule that holds for each of the several", () => {
    const compiled = subject(all(any(is("kind", "a"), is("kind", "b")), yes("near")));
    expect(said(compiled, { kind: "a | b", near: true }).dangers[0]?.holds).toEqual({
      truth: "true",
      because: ["fact kind", "fact near"],
    });
  });
});

describe("what cannot be found out", () => {
  test("ends the questions where nothing that can be asked tells any more: FI at once", () => {
    // Danger for one kind when near, for another when far; what kind it is cannot be seen.
    const compiled = subject(any(all(is("kind", "a"), yes("near")), all(is("kind", "b"), is("near", "no"))));
    const unseen = said(compiled, { kind: cannot });
    expect(unseen).toMatchObject({ open: [], unsettled: ["kind"], classification: "FI", ending: "not-ruled-out" });
    expect(unseen.next).toBeUndefined();
    // Where the kind can be found out, being near is worth asking.
    expect(said(compiled, {}).open).toEqual(["kind", "near"]);
  });

  test("is not asked about at a price where only that is left: what is left open costs nothing", () => {
    // Broken is danger. Of what is not, whether it is danger turns on the kind, which cannot be seen, and on being near.
    const turned = any(all(is("kind", "a"), yes("near")), all(is("kind", "b"), is("near", "no")));
    const compiled = subject(any(is("state", "broken"), turned));
    const { knowledge } = readAnswers(compiled, { facts: { kind: cannot } });
    const plan = cheapest(compiled, compiled.root, knowledge, () => 1);
    expect(plan).toEqual({ price: 1, variable: compiled.index.get("fact state") });
  });

  test("is named to whoever ordered the report only where it could still change anything", () => {
    const compiled = subject(any(all(is("kind", "a"), yes("near")), all(is("kind", "b", "c"), is("state", "broken"))));
    const { knowledge } = readAnswers(compiled, { facts: { kind: "b | c", near: cannot, state: cannot } });
    const told = (facts: readonly string[]) => statementThatHolds(unsure("w", facts), "FI", compiled, knowledge);
    expect(told(["near"])).toBeUndefined();
    expect(told(["state"])).toBeDefined();
  });

  test("is C3 or none, nothing dangerous either way, where only these are possible", () => {
    const compiled = subject(NEVER, yes("near"));
    expect(said(compiled, { near: cannot })).toMatchObject({
      possible: ["none", "C3"],
      classification: null,
      ending: "no-danger",
      unsettled: ["near"],
      open: [],
    });
    expect(said(compiled, {})).toMatchObject({ ending: "open", open: ["near"] });
  });

  test("is at least C2 where C1 is the only other", () => {
    const layered = compile({
      id: "any",
      facts: FACTS,
      contested: {},
      paths: [
        {
          id: "p",
          hazard: "burns-or-fire",
          route: "r",
          exists: ALWAYS,
          layers: [{ id: "l", provision: "insulation", words: "l", gone: yes("near"), sound: NEVER }],
        },
      ],
      departures: [],
    });
    expect(said(layered, { near: cannot })).toMatchObject({ classification: "C2", ending: "at-least" });
  });
});
