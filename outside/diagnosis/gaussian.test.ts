import { execFileSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import {
  addOuter,
  factored,
  givenOthers,
  logDensity,
} from "../../packages/readings/src/diagnosis/installation/gaussian.ts";
import {
  belief,
  contributionOf,
  logEvidence,
  updated,
} from "../../packages/readings/src/diagnosis/installation/shared-fit.ts";
import { needTool, PYTHON } from "../tools.ts";

const PROGRAM = `
import json, sys
from scipy.stats import multivariate_normal as normal
print(json.dumps([float(normal(None, one["covariance"]).logpdf(one["deviation"])) for one in json.load(sys.stdin)]))
`;

interface Asked {
  readonly covariance: readonly (readonly number[])[];
  readonly deviation: readonly number[];
}

const scipy = (asked: readonly Asked[]): readonly number[] =>
  JSON.parse(execFileSync(PYTHON, ["-c", PROGRAM], { input: JSON.stringify(asked), encoding: "utf8" }));

const rows = (matrix: Float64Array, size: number) =>
  Array.from({ length: size }, (_, i) => [...matrix.subarray(i * size, (i + 1) * size)]);

function randomCovariance(chance: Chance, size: number): Float64Array {
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i++) matrix[i * size + i] = chance.between(0.05, 1) ** 2;
  for (let k = 0; k < 3; k++)
    addOuter(
      matrix,
      Float64Array.from({ length: size }, () => chance.normal(0, 1)),
    );
  return matrix;
}

const close = (ours: number, theirs: number) =>
  expect(Math.abs(ours - theirs)).toBeLessThan(1e-8 * (1 + Math.abs(theirs)));

describe.skipIf(!needTool("scipy"))("against scipy", () => {
  const chance = new Chance(31);

  test("densities of normal vectors", () => {
    const drawn = Array.from({ length: 40 }, () => {
      const size = 1 + Math.floor(chance.uniform() * 7);
      return {
        size,
        matrix: randomCovariance(chance, size),
        deviation: Float64Array.from({ length: size }, () => chance.normal(0, 2)),
      };
    });
    const theirs = scipy(
      drawn.map(({ matrix, size, deviation }) => ({ covariance: rows(matrix, size), deviation: [...deviation] })),
    );
    for (const [i, { matrix, size, deviation }] of drawn.entries()) {
      const factor = factored(matrix, size);
      if (factor === undefined) throw new Error("not positive definite");
      close(logDensity(factor, deviation), theirs[i] as number);
    }
  });

  test("evidence of blocks that share errors is the density of all their readings together", () => {
    const asked: Asked[] = [];
    const ours: number[] = [];
    for (let round = 0; round < 20; round++) {
      const shared = 4;
      const deviations = Array.from({ length: shared }, () => chance.between(0.2, 3));
      const means = Array.from({ length: shared }, () => chance.normal(0, 1));
      const prior = belief(means, deviations);
      let all = prior;
      let densities = 0;
      const blocks = Array.from({ length: 1 + Math.floor(chance.uniform() * 4) }, () => {
        const size = 1 + Math.floor(chance.uniform() * 3);
        return {
          size,
          covariance: randomCovariance(chance, size),
          rows: Array.from({ length: size }, () => Float64Array.from({ length: shared }, () => chance.normal(0, 1))),
          values: Float64Array.from({ length: size }, () => chance.normal(0, 2)),
        };
      });
      for (const { size, covariance, rows: of, values } of blocks) {
        const block = {
          slots: Array(size).fill("zs"),
          readings: [],
          mean: new Float64Array(size),
          covariance,
          shared: of,
        };
        const contribution = contributionOf(block, values, shared);
        if (contribution === undefined) throw new Error("not positive definite");
        all = updated(all, contribution, 1);
        densities += contribution.logDensity;
      }
      ours.push(logEvidence(prior, all, densities));
      // The same as one dense vector: own covariances down the diagonal, shared errors across.
      const flat = blocks.flatMap((block) =>
        block.rows.map((row, i) => ({ block, row, i, value: block.values[i] as number })),
      );
      asked.push({
        deviation: flat.map(
          ({ row, value }) => value - row.reduce((sum, one, k) => sum + one * (means[k] as number), 0),
        ),
        covariance: flat.map((a) =>
          flat.map(
            (b) =>
              (a.block === b.block ? (a.block.covariance[a.i * a.block.size + b.i] as number) : 0) +
              a.row.reduce((sum, one, k) => sum + one * (b.row[k] as number) * (deviations[k] as number) ** 2, 0),
          ),
        ),
      });
    }
    for (const [i, theirs] of scipy(asked).entries()) close(ours[i] as number, theirs);
  });

  test("what one reading should be given the others is where its density is greatest", () => {
    for (let round = 0; round < 20; round++) {
      const matrix = randomCovariance(chance, 4);
      const factor = factored(matrix, 4);
      if (factor === undefined) throw new Error("not positive definite");
      const deviation = Float64Array.from({ length: 4 }, () => chance.normal(0, 1));
      const [best, spread] = givenOthers(factor, deviation, 2);
      const at = (value: number) =>
        logDensity(
          factor,
          Float64Array.from(deviation, (one, i) => (i === 2 ? value : one)),
        );
      expect(at(best)).toBeGreaterThan(at(best + 0.1 * spread));
      expect(at(best)).toBeGreaterThan(at(best - 0.1 * spread));
      // One deviation away the density has fallen by half a unit of its logarithm.
      expect(at(best) - at(best + spread)).toBeCloseTo(0.5, 6);
    }
  });
});
