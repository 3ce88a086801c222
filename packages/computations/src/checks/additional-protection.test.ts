import { nodesOf, Reckoner } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { givenFromText } from "../given.ts";
import { additionalProtection } from "./additional-protection.ts";

type Written = Readonly<Record<string, string | readonly string[]>>;

function concludedOn(given: Written) {
  const made = givenFromText(additionalProtection.needs, {
    load: "socket-outlets",
    use: "dwelling",
    rcd: "yes",
    ...given,
  });
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  const { judgement, beside } = additionalProtection.conclude(made.given, new Reckoner(true));
  const residuals = (roots: readonly Parameters<typeof nodesOf>[0][]) =>
    roots.flatMap((root) =>
      [...nodesOf(root)].flatMap((node) =>
        node.kind === "seen" && node.term.id === "residual-operating-current" ? [node.detail.text] : [],
      ),
    );
  return { verdict: judgement.verdict, decides: residuals([judgement]), beside: residuals(beside) };
}

describe("what decides is the RCD that is there for it, and one ahead that never could be stands beside", () => {
  const AHEAD = { residual: ["30mA", "100mA"], delay: ["general", "S"] };

  test.each<[string, Written, string]>([
    ["dead", { ...AHEAD, rcdTest: ["does-not-operate", "in-time"] }, "not-met"],
    ["slow", { ...AHEAD, rcdTest: ["too-slow", "in-time"] }, "not-met"],
    ["not tested", AHEAD, "not-known"],
    ["working", { ...AHEAD, rcdTest: ["in-time", "does-not-operate"] }, "met"],
  ])("30 mA %s, 100 mA S ahead", (_, given, verdict) => {
    expect(concludedOn(given)).toEqual({
      verdict,
      decides: ["30mA"],
      beside: ["100mA"],
    });
  });

  test("none sensitive enough: each of them decides", () => {
    expect(concludedOn({ residual: ["300mA", "100mA"], delay: ["general", "S"] })).toEqual({
      verdict: "not-met",
      decides: ["300mA", "100mA"],
      beside: [],
    });
  });

  test("a delayed one of 30 mA is not there for it either", () => {
    const { decides, beside } = concludedOn({ residual: ["30mA", "30mA"], delay: ["general", "S"] });
    expect([decides, beside]).toEqual([["30mA"], ["30mA"]]);
  });
});
