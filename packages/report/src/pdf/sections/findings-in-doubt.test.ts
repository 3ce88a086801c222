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

/** Gives the lights without an RCD another reading of Zs. */
function lightsZs(file: unknown, shown: string): void {
  const { boards } = file as { boards: { circuits: { readings: { zs?: { shown: string } } }[] }[] };
  const zs = boards[0]?.circuits[4]?.readings.zs;
  if (zs !== undefined) zs.shown = shown;
}

describe("how sure findings are, in the report", () => {
  test("a finding that is too near says how probable it is; without figures nothing is said", () => {
    const input = inputOf(changed((file) => lightsZs(file, "6.80 Ω")));
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
    const input = inputOf(changed((file) => lightsZs(file, "6.80 Ω")));
    const known = sure(input).conformity;
    const all = input.weighing.circuits.flat().filter(({ check }) => check === "maximum-zs");
    const doubtful = all.find(({ judgement }) => judgement.verdict === "too-near");
    const met = all.find(({ judgement }) => judgement.verdict === "met");
    const doubt = doubtful && known?.get(doubtful);
    if (known === undefined || met === undefined || doubt === undefined) throw new Error("none in doubt");
    expect(doubt.probability).toBeLessThan(0.95);
    const unsure = { ...input, conformity: new Map(known).set(met, doubt) };
    const more = listed(unsure).length - listed(input).length;
    expect(more).toBe(1);
    expect(clauses(unsure).filter(({ verdict }) => verdict === "met")).toHaveLength(more);
    expect(findings(unsure, new Drawings()).intro).toContain("below 95 %");
    expect(findings(input, new Drawings()).intro).not.toContain("below 95 %");
  });
});
