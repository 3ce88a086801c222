import { execFileSync } from "node:child_process";
import { chanceOfAtMost, chancesFound, mostDefective } from "@good-grounds/computations";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { needTool, PYTHON } from "../tools.ts";

const CASES = fc.sample(
  fc
    .tuple(
      fc.integer({ min: 1, max: 2000 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    )
    .map(([population, bad, opened, at]) => {
      const inspected = Math.round(opened * population);
      return { population, defective: Math.round(bad * population), inspected, found: Math.round(at * inspected) };
    }),
  { numRuns: 400, seed: 7671 },
);

/** SciPy's answers for every case at once: chance of exactly, and of at most, so many. */
function scipy(): readonly { readonly exactly: number; readonly atMost: number }[] {
  const program =
    "import json,sys\nfrom scipy.stats import hypergeom\nprint(json.dumps([{'exactly': hypergeom.pmf(c['found'], c['population'], c['defective'], c['inspected']), 'atMost': hypergeom.cdf(c['found'], c['population'], c['defective'], c['inspected'])} for c in json.load(sys.stdin)]))";
  return JSON.parse(execFileSync(PYTHON, ["-c", program], { input: JSON.stringify(CASES), encoding: "utf8" }));
}

describe.skipIf(!needTool("scipy"))("hypergeometric chances against a statistics library", () => {
  const answers = needTool("scipy") ? scipy() : [];

  test("agree to 1e-12 on samples of every size", () => {
    for (const [i, { population, defective, inspected, found }] of CASES.entries()) {
      const { exactly, atMost } = answers[i] as (typeof answers)[number];
      const own = chancesFound(population, defective, inspected)[found] as number;
      expect(Math.abs(own - exactly)).toBeLessThan(1e-12 * Math.max(1, exactly));
      expect(Math.abs(chanceOfAtMost(found, population, defective, inspected) - atMost)).toBeLessThan(1e-12);
    }
  });
});

/** C(n, k) as a whole number. */
function choose(n: bigint, k: bigint): bigint {
  let product = 1n;
  for (let i = 0n; i < k; i++) product = (product * (n - i)) / (i + 1n);
  return product;
}

test("agree with whole-number arithmetic to the last digits", () => {
  for (const [N, D, n, k] of [
    [50n, 11n, 10n, 0n],
    [200n, 30n, 60n, 9n],
    [500n, 3n, 100n, 1n],
  ] as const) {
    const scaled = (choose(D, k) * choose(N - D, n - k) * 10n ** 30n) / choose(N, n);
    const exact = Number(scaled) / 1e30;
    const own = chancesFound(Number(N), Number(D), Number(n))[Number(k)] as number;
    expect(Math.abs(own / exact - 1)).toBeLessThan(1e-12);
  }
});

/** Figures the trade quotes for a clean fifth of a house and of a block; worked there with the same distribution. */
test("a clean fifth of a house says little: 10 of 50 leaves up to 11, 60 of 300 up to 13", () => {
  expect([mostDefective(50, 10, 0, 0.95), mostDefective(300, 60, 0, 0.95)]).toEqual([11, 13]);
});
