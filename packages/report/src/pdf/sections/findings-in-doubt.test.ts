import { conformities } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../../outside/reports/example.ts";
import type { ReportInput } from "../../input.ts";
import { Drawings } from "../drawings.ts";
import { findings } from "./findings.ts";

const sure = (input: ReportInput): ReportInput => ({
  ...input,
  conformity: conformities(input.weighing, input.installation),
});
const listed = (input: ReportInput) => findings(input, new Drawings()).places.flatMap((place) => place.findings);
const clauses = (input: ReportInput) =>
  listed(input).flatMap(({ remarks, verdict }) =>
    remarks.filter((words) => /[Pp]robability that/.test(words)).map((words) => ({ words, verdict })),
  );

describe("how sure findings are, in the report", () => {
  test("a finding that is too near says how probable it is; without figures nothing is said", () => {
    const input = inputOf(EXAMPLE);
    expect(clauses(input)).toEqual([]);
    const said = clauses(sure(input)).filter(({ verdict }) => verdict === "too near to call");
    expect(said.length).toBeGreaterThan(0);
    for (const { words } of said)
      expect(words).toMatch(
        /^Probability that it is met: .+%.*\. Simple acceptance: (met|not met|too near to call)\.$/,
      );
  });

  test("with accuracies stated no met limit is written out for being unsure", () => {
    const input = inputOf(EXAMPLE);
    expect(listed(sure(input)).map(({ title }) => title)).toEqual(listed(input).map(({ title }) => title));
  });

  test("a limit that is met but less than 95 % sure is written out, and the section says so", () => {
    const text = changed((file) => {
      const { instruments, boards } = file as unknown as {
        instruments: Record<string, unknown>[];
        boards: { circuits: { readings: { zs?: { shown: string } } }[] }[];
      };
      for (const instrument of instruments) Reflect.deleteProperty(instrument, "accuracy");
      const zs = boards[0]?.circuits[0]?.readings.zs;
      if (zs !== undefined) zs.shown = "1.29 Ω";
    });
    const input = inputOf(text);
    const more = listed(sure(input)).length - listed(input).length;
    const met = clauses(sure(input)).filter(({ verdict }) => verdict === "met");
    expect(more).toBeGreaterThan(0);
    expect(met).toHaveLength(more);
    expect(findings(sure(input), new Drawings()).intro).toContain("below 95 %");
    expect(findings(input, new Drawings()).intro).not.toContain("below 95 %");
  });
});
