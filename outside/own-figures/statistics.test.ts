import { execFileSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import {
  atLeastOf,
  chiSquaredAbove,
  withinNormal,
} from "../../packages/readings/src/own-figures/statistics/chances.ts";
import { needTool, PYTHON } from "../tools.ts";

const SQUARES = [0.01, 0.5, 3, 8.34, 16.9, 27.88, 60, 150];
const FREEDOMS = [1, 2, 3, 8, 9, 20];
const HALVES = [0.001, 0.1, 0.5, 1, 2.5, 4, 7];
const COUNTS = [
  { all: 9, least: 9, chance: 0.24 },
  { all: 40, least: 20, chance: 0.38 },
  { all: 200, least: 90, chance: 0.3 },
];

const PROGRAM = `
import json,sys
from scipy.stats import chi2, norm, binom
q=json.load(sys.stdin)
print(json.dumps({
 'squares':[[float(chi2.sf(x,f)) for f in q['freedoms']] for x in q['squares']],
 'halves':[float(norm.cdf(h)-norm.cdf(-h)) for h in q['halves']],
 'counts':[float(binom.sf(c['least']-1,c['all'],c['chance'])) for c in q['counts']]}))`;

describe.skipIf(!needTool("scipy"))("chances against a statistics library", () => {
  const asked = { squares: SQUARES, freedoms: FREEDOMS, halves: HALVES, counts: COUNTS };
  const answers = needTool("scipy")
    ? (JSON.parse(
        execFileSync(PYTHON, ["-c", PROGRAM], { input: JSON.stringify(asked), encoding: "utf8" }),
      ) as Readonly<Record<string, readonly number[]>> & { readonly squares: readonly (readonly number[])[] })
    : undefined;

  test("chi-squared agrees to 1e-11 of itself in its tail", () => {
    for (const [i, square] of SQUARES.entries()) {
      for (const [j, freedom] of FREEDOMS.entries()) {
        const expected = answers?.squares[i]?.[j] as number;
        expect(Math.abs(chiSquaredAbove(square, freedom) - expected), `${square} ${freedom}`).toBeLessThan(
          Math.max(1e-11 * expected, 1e-300),
        );
      }
    }
  });

  test("normal errors agree to 1e-12", () => {
    for (const [i, half] of HALVES.entries())
      expect(Math.abs(withinNormal(half, 1) - (answers?.halves?.[i] as number))).toBeLessThan(1e-12);
  });

  test("counts agree to 1e-10 of themselves", () => {
    for (const [i, { all, least, chance }] of COUNTS.entries()) {
      const expected = answers?.counts?.[i] as number;
      const own = atLeastOf(
        Array.from({ length: all }, () => chance),
        least,
      );
      expect(Math.abs(own / expected - 1)).toBeLessThan(1e-10);
    }
  });
});
