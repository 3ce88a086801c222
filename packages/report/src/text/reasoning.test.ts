import { describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../outside/reports/example.ts";
import { Drawings } from "../pdf/drawings.ts";
import { observations } from "../pdf/sections/observations.ts";
import { clientSentence } from "../words/reasoning.ts";
import { renderReasoning } from "./reasoning.ts";

type Edit = Parameters<typeof changed>[0];
const edited = (id: string, edit: (one: Record<string, unknown>) => void): string =>
  changed(({ observations: all }) => {
    for (const one of all) if (one.id === id) edit(one);
  });

/** What is told of an observation in plain words: for the terminal, in the report, and as data. */
function toldOf(text: string, id: string) {
  const input = inputOf(text);
  const one = input.reasoned.find(({ observation }) => observation === id);
  if (one === undefined) throw new Error(`no observation ${id}`);
  const lines = renderReasoning(one, 400);
  return {
    terminal: lines.find((line) => line.startsWith("For the person who ordered the report")) ?? "",
    report: observations(input, new Drawings()).list.find(({ number }) =>
      number.endsWith(`number ${id.slice(1)} in the file`),
    ),
    data: clientSentence(one),
  };
}

describe("what the person who ordered the report is told", () => {
  test("is the sentence that the facts bear out", () => {
    const { terminal, report, data } = toldOf(EXAMPLE, "o5");
    expect(terminal).toContain("A wire is loose in a socket, switch or light");
    expect(report?.reasoning.plain).toContain("A wire is loose in a socket, switch or light");
    expect(data).toContain("A wire is loose in a socket, switch or light");
  });

  test("of danger that was dealt with is what was done, in terminal, report and data alike", () => {
    const { terminal, report, data } = toldOf(EXAMPLE, "o6");
    for (const words of [terminal, report?.reasoning.plain, data]) {
      expect(words).toMatch(/Done about it before we left: \p{L}/u);
      expect(words).not.toContain("can touch live metal");
    }
  });

  test("is nothing of ours where the inspector chose against the facts; what was seen stands in their own words", () => {
    const choose: Edit = ({ observations: all }) => {
      for (const one of all)
        if (one.id === "o5")
          Object.assign(one.choice as object, { classification: "C3", reason: "Seems firm enough." });
    };
    const { terminal, report, data } = toldOf(changed(choose), "o5");
    expect([terminal, report?.reasoning.plain, data]).toEqual(["", "", ""]);
    expect(report?.what.length).toBeGreaterThan(20);
  });

  test("does not call not found out what was", () => {
    const known = toldOf(
      edited("o1", (one) => {
        one.facts = { covered: "surrounded", "within-cable": { notKnown: "limited", reason: "route" }, load: "heavy" };
      }),
      "o1",
    );
    expect(known.data).toContain("A cable lies in wool or foam. We could not find out whether");
    expect(known.data).not.toContain("how it lies");
    expect(toldOf(EXAMPLE, "o1").data).toMatch(/A cable may lie in wool or foam.* We could not find out how it lies/);
  });
});
