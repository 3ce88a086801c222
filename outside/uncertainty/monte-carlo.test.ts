import { readFileSync } from "node:fs";
import {
  assumed,
  COMMON_PART,
  type Compared,
  type Evidence,
  LEADS_LEFT,
  nodesOf,
  Reckoner,
  type Unit,
} from "@good-grounds/core";
import { type InspectionFile, type Installation, parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { comparedConformity } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { adaptCase, type CaseFile } from "../cases/adapt.ts";
import { drawn } from "./monte-carlo.ts";
import { randomComparison } from "./random-comparison.ts";

const DRAWS = 10_000;

/**
 * Two accounts are judged by a normal distribution, which one wide rectangle among the errors leaves by so much; and the
 * two causes of a length are one range in the lines that are drawn from.
 */
const NORMAL = 0.12;

/** Four standard errors of a share of 10,000 draws, and what the analytic way may be off by. */
const AGREES = 0.02 + 0.01;

const ASSUMPTIONS = { commonPart: COMMON_PART, leads: LEADS_LEFT };

describe("probability against Monte Carlo", () => {
  test("invented arithmetic on invented readings, limits within reach", () => {
    const chance = new Chance(98_106);
    let [given, bent, worst] = [0, 0, 0];
    const off: number[] = [];
    for (let i = 0; i < 400; i++) {
      const compared = randomComparison(chance);
      const conformity = comparedConformity(compared);
      if (conformity === undefined) continue;
      const { probability, lowest, highest, notes } = conformity;
      const { holds } = drawn(compared, chance, DRAWS, ASSUMPTIONS);
      expect(holds).toBeGreaterThanOrEqual(lowest - AGREES);
      expect(holds).toBeLessThanOrEqual(highest + AGREES);
      if (probability === null) {
        bent++;
        expect(notes.includes("curved") || notes.includes("ranges")).toBe(true);
        continue;
      }
      given++;
      off.push(Math.abs(probability - holds));
      worst = Math.max(worst, Math.abs(probability - holds));
    }
    off.sort((a, b) => a - b);
    expect(worst).toBeLessThan(AGREES);
    expect(off[Math.floor(off.length * 0.95)]).toBeLessThan(0.012);
    // Invented arithmetic divides by next to nothing and takes the larger of equals; most of it still has a figure.
    expect(given).toBeGreaterThan(3 * bent);
  });

  test.each([
    ...["farmhouse", "terraced-house", "workshop"].map((name) => [name, example(name)] as const),
    ...["case-1", "case-2"].map((name) => [name, adapted(name)] as const),
  ])("%s: every comparison of its checks, with the limit moved within reach", (_, file) => {
    const installation = resolveInstallation(file);
    const chance = new Chance(7671);
    let held = 0;
    for (const compared of comparisonsOf(installation)) {
      const near = movedLimit(compared, chance);
      if (near === undefined) continue;
      const conformity = comparedConformity(near);
      // A display at the end of its range is not drawn: what lies beyond it has no distribution.
      if (conformity?.probability == null || conformity.notes.includes("open-ended")) continue;
      const { holds, deviation } = drawn(near, chance, DRAWS, ASSUMPTIONS);
      expect(Math.abs(conformity.probability - holds), near.matter.id).toBeLessThan(AGREES);
      const combined = Math.hypot(...conformity.budget.map(({ contribution }) => contribution));
      if (deviation > 0 && combined > 0) expect(Math.abs(combined / deviation - 1)).toBeLessThan(0.08);
      held++;
    }
    expect(held).toBeGreaterThan(15);
  });

  test("agreements: how often errors alone bring the accounts so far apart", () => {
    const installation = resolveInstallation(example("terraced-house"));
    const chance = new Chance(61_557);
    let held = 0;
    for (const compared of comparisonsOf(installation)) {
      if (compared.relation !== "agrees-with") continue;
      const conformity = comparedConformity(compared);
      if (conformity?.probability == null || conformity.notes.includes("open-ended")) continue;
      const apart = Math.abs(conformity.difference);
      // The spread about its own middle, drawn twice: a difference of two draws would be wider.
      const { mean } = drawn(compared, chance, DRAWS, ASSUMPTIONS);
      const further = sharesBeyond(compared, chance, mean, apart);
      expect(Math.abs(conformity.probability - further), compared.matter.id).toBeLessThan(AGREES + NORMAL);
      held++;
    }
    expect(held).toBeGreaterThan(8);
  });
});

/** How often a draw lies further from the middle than `apart`. */
function sharesBeyond(compared: Compared, chance: Chance, mean: number, apart: number): number {
  let beyond = 0;
  for (let i = 0; i < DRAWS / 4; i++) {
    const one = drawn(compared, chance, 1, ASSUMPTIONS);
    if (Math.abs(one.mean - mean) >= apart) beyond++;
  }
  return beyond / (DRAWS / 4);
}

function comparisonsOf(installation: Installation): readonly Compared[] {
  const { supply, boards, circuits } = weigh(installation);
  const roots = [...supply, ...boards.flat(), ...circuits.flat()].flatMap(({ judgement, beside }) => [
    judgement,
    ...beside,
  ]);
  const all = new Set(roots.flatMap((root) => [...nodesOf(root)]).filter((node) => node.kind === "compared"));
  return [...all];
}

const RECKON = new Reckoner(true);

/** The same value held against a limit that lies within its errors; undefined where it has none. */
function movedLimit(compared: Compared, chance: Chance): Compared | undefined {
  if (compared.verdict === "not-known") return undefined;
  const [left] = compared.from as readonly [Evidence<Unit>, Evidence<Unit>];
  const half = Math.max((left.high - left.low) / 2, left.kind === "measured" ? left.value * 0.1 : 0);
  if (!(half > 0) || !Number.isFinite(half)) return undefined;
  const middle = Number.isFinite(left.high) ? (left.low + left.high) / 2 : left.value;
  const limit = assumed(left.term, middle + half * chance.between(-0.5, 0.5), "invented");
  return RECKON.atMost(compared.matter, left, limit);
}

function example(name: string): InspectionFile {
  const parsed = parseInspection(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8"));
  if (!parsed.ok) throw new Error(`${name} does not parse`);
  return parsed.file;
}

function adapted(name: string): InspectionFile {
  return adaptCase(
    JSON.parse(readFileSync(new URL(`../cases/data/${name}.json`, import.meta.url), "utf8")) as CaseFile,
  );
}
