import { readFileSync } from "node:fs";
import { resolveInstallation } from "@good-grounds/inspection";
import { lookAtOwnFigures } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { adaptCase, type CaseFile } from "../cases/adapt.ts";
import { measureClean, measurePlanted } from "./measure.ts";

const RESULTS = readFileSync(new URL("results.md", import.meta.url), "utf8");

/** The rows of the written tables: kind, number of jobs, number shown. */
const ROWS = [...RESULTS.matchAll(/^\| ([^|]+) \| (\d+) \| (\d+) \|/gm)].map(([, kind, jobs, shown]) => ({
  kind: kind as string,
  jobs: Number(jobs),
  part: Number(shown) / Number(jobs),
}));

/** Smaller than the written measurement: chance may take a few per cent more. */
const CLEAN = 240;
const PLANTED = 80;
const LEAST_FOUND = 0.85;
const LONG = 300_000;
/** Kinds of which something is asked; those after them show the limits. */
const PLANTED_KINDS = 9;

describe("simulated jobs", () => {
  test("clean ones show next to nothing", { timeout: LONG }, () => {
    for (const { kind, jobs, shown } of measureClean(CLEAN)) expect(shown / jobs, kind).toBeLessThan(0.02);
  });

  test("what is planted is found", { timeout: LONG }, () => {
    for (const { kind, jobs, shown } of measurePlanted(PLANTED)) {
      expect(jobs, kind).toBeGreaterThan(PLANTED / 2);
      expect(shown / jobs, kind).toBeGreaterThan(LEAST_FOUND);
    }
  });

  test("the written results are of 2,000 clean jobs and hold what is asked", () => {
    const clean = ROWS.filter(({ kind }) => kind.startsWith("clean"));
    expect(clean[0]?.jobs).toBe(2000);
    for (const { kind, part } of clean) expect(part, kind).toBeLessThan(0.01);
    const planted = ROWS.filter(({ kind }) => !kind.startsWith("clean")).slice(0, PLANTED_KINDS);
    expect(planted.at(-1)?.kind).toBe("half of the rows copied from an earlier file");
    for (const { kind, part } of planted) expect(part, kind).toBeGreaterThan(0.9);
  });
});

describe("the invented installations with planted faults", () => {
  const shown = (name: string) => {
    const from: CaseFile = JSON.parse(readFileSync(new URL(`../cases/data/${name}.json`, import.meta.url), "utf8"));
    return lookAtOwnFigures(resolveInstallation(adaptCase(from))).toConfirm;
  };

  test("case 1: the R1+R2 that was copied from the row above, and nothing else", () => {
    const found = shown("case-1");
    expect(found.map(({ check }) => check)).toEqual(["repeated-row"]);
    expect(found[0]?.words).toContain("circuit 6 (lights, first floor)");
  });

  test("case 2: nothing; its faults are none of the figures", () => {
    expect(shown("case-2")).toEqual([]);
  });
});
