import { CLASSIFICATIONS, type Classification, SEVERITIES } from "@good-grounds/core";
import { cohenKappa, fleissKappa, type Weighting } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { ratingTable, squareTable, wholeNumbers } from "./random-tables.ts";
import { askStatsmodels } from "./statsmodels.ts";

const WEIGHTINGS: readonly Weighting[] = ["unweighted", "linear", "quadratic"];
const TABLES = 300;
const CLOSE = 1e-9;

function pairsOf(table: readonly (readonly number[])[], categories: readonly Classification[]) {
  return table.flatMap((row, i) =>
    row.flatMap((count, j) =>
      Array.from({ length: count }, () => [categories[i], categories[j]] as [Classification, Classification]),
    ),
  );
}

const isThere = needTool("statsmodels");

describe.skipIf(!isThere)("a statistics library agrees", () => {
  const next = wholeNumbers(20260417);
  const cohen = Array.from({ length: TABLES }, (_, i) => {
    const weighting = WEIGHTINGS[i % WEIGHTINGS.length] as Weighting;
    const categories: readonly Classification[] = weighting === "unweighted" ? CLASSIFICATIONS : SEVERITIES;
    return { weighting, categories, table: squareTable(categories.length, next) };
  });
  const fleiss = Array.from({ length: TABLES }, () => ratingTable(CLASSIFICATIONS.length, next));
  const answers = isThere ? askStatsmodels({ cohen, fleiss }) : { cohen: [], fleiss: [] };

  test.each(WEIGHTINGS)("on Cohen's kappa and its standard error, %s", (weighting) => {
    let compared = 0;
    const values = new Set<number>();
    for (const [i, one] of cohen.entries()) {
      if (one.weighting !== weighting) continue;
      const ours = cohenKappa(pairsOf(one.table, one.categories), weighting);
      if (!ours.defined) throw new Error(`not defined: ${JSON.stringify(one.table)}`);
      expect(Math.abs(ours.value - (answers.cohen[i]?.kappa ?? Number.NaN))).toBeLessThan(CLOSE);
      // Squares, since where the true spread is nothing the library's rounding shows in its root.
      const variance = (answers.cohen[i]?.standardError ?? Number.NaN) ** 2;
      expect(Math.abs(ours.standardError ** 2 - variance)).toBeLessThan(CLOSE ** 1.5);
      values.add(Math.round(ours.value * 100));
      compared += 1;
    }
    expect(compared).toBe(TABLES / WEIGHTINGS.length);
    // The tables must reach over a good part of the scale, or agreeing on them would say little.
    expect(values.size).toBeGreaterThan(30);
  });

  test("on Fleiss' kappa", () => {
    for (const [i, table] of fleiss.entries()) {
      const ratings = table.map((row) =>
        row.flatMap((count, j) => Array.from({ length: count }, () => CLASSIFICATIONS[j] as Classification)),
      );
      const ours = fleissKappa(ratings);
      if (!ours.defined) throw new Error(`not defined: ${JSON.stringify(table)}`);
      expect(Math.abs(ours.value - (answers.fleiss[i] ?? Number.NaN))).toBeLessThan(CLOSE);
    }
    expect(answers.fleiss).toHaveLength(TABLES);
  });
});
