import { describe, expect, test } from "vitest";
import { reasonedInExample } from "./reasoned-example.ts";

/** A cupboard that the observation brings in. */
const about = (cupboard: Record<string, unknown>, facts: Record<string, unknown> = {}) =>
  reasonedInExample({
    topic: "basic-protection",
    facts,
    brings: { enclosures: [{ id: "cupboard", ...cupboard }] },
  });

describe("a thing with states answers what is asked of it", () => {
  const SHUT = { covering: "basic-sound", entry: "nothing", firmness: "whole", hinges: true, openedBy: "hand" };

  test("tails with single insulation behind a door that shuts, prams rub them: one event", () => {
    const one = about(
      { ...SHUT, wear: ["stored-or-moved-things"], comers: "anyone" },
      { "allowed-opening": "no", "barrier-behind": "no", "arms-reach": "within" },
    );
    expect(one.reasoning.possible).toEqual(["C2"]);
    const known = one.recorded.map(({ fact }) => fact).sort();
    expect(known).toEqual(
      expect.arrayContaining([
        "cover-fixing",
        "cover-opens",
        "gets-in",
        "hinges-carry",
        "live-covering",
        "wears",
        "who-comes",
      ]),
    );
    expect(one.reasoning.next).toBeUndefined();
  });

  test("what is recorded of it is not asked again, and what is not recorded stays open", () => {
    const one = about({ covering: "bare" });
    expect(one.recorded.map(({ fact, value }) => [fact, value])).toEqual([["live-covering", "bare"]]);
    expect(one.reasoning.possible).toEqual(["none", "C3", "C2", "C1"]);
    expect(one.reasoning.open).not.toContain("live-covering");
  });

  test("said otherwise than recorded: both readings stay possible", () => {
    const one = about({ ...SHUT, covering: "bare" }, { "live-covering": "double-or-reinforced" });
    expect(one.against.map(({ fact, stated }) => [fact, stated])).toEqual([["live-covering", "double-or-reinforced"]]);
    expect(one.reasoning.classification).toBeNull();
  });

  test("a thing that nobody names is not spoken of", () => {
    const one = reasonedInExample({ topic: "basic-protection", facts: {} });
    expect(one.recorded).toEqual([]);
  });
});
