import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assign, type Edge } from "./assignment.ts";

/** Every one-to-one assignment of some rows to columns, with its weight: −1 stands for staying alone. */
function* every(
  rows: number,
  columns: number,
  weights: readonly (readonly number[])[],
  row = 0,
  taken = 0,
): Generator<{ columnOf: number[]; weight: number }> {
  if (row === rows) {
    yield { columnOf: [], weight: 0 };
    return;
  }
  for (const rest of every(rows, columns, weights, row + 1, taken))
    yield { columnOf: [-1, ...rest.columnOf], weight: rest.weight };
  for (let column = 0; column < columns; column++) {
    if ((taken >> column) % 2 === 1) continue;
    for (const rest of every(rows, columns, weights, row + 1, taken | (1 << column)))
      yield { columnOf: [column, ...rest.columnOf], weight: rest.weight + (weights[row]?.[column] ?? 0) };
  }
}

const problem = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 })).chain(([rows, columns]) =>
  fc.array(fc.array(fc.double({ min: -3, max: 8, noNaN: true }), { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);

const edgesOf = (weights: readonly (readonly number[])[]): Edge[] =>
  weights.flatMap((list, row) => list.map((weight, column) => ({ row, column, weight })));

describe("assignment", () => {
  test("has the greatest weight of all, and every other choice falls short by what trying all of them says", () => {
    fc.assert(
      fc.property(problem, (weights) => {
        const [rows, columns] = [weights.length, weights[0]?.length ?? 0];
        const all = [...every(rows, columns, weights)];
        const best = Math.max(...all.map(({ weight }) => weight));
        const found = assign(rows, columns, edgesOf(weights));
        const weight = found.columnOf.reduce(
          (sum, column, row) => sum + (column < 0 ? 0 : (weights[row]?.[column] ?? 0)),
          0,
        );
        expect(weight).toBeCloseTo(best, 9);
        const short = (has: (columnOf: readonly number[]) => boolean) =>
          best - Math.max(...all.filter(({ columnOf }) => has(columnOf)).map((one) => one.weight));
        for (const { row, column, excess } of found.excess)
          expect(excess).toBeCloseTo(
            short((one) => one[row] === column),
            9,
          );
        for (const [row, excess] of found.rowAlone.entries())
          expect(excess).toBeCloseTo(
            short((one) => one[row] === -1),
            9,
          );
        for (const [column, excess] of found.columnAlone.entries())
          expect(excess).toBeCloseTo(
            short((one) => !one.includes(column)),
            9,
          );
      }),
    );
  });

  test("weights of 0 and below never join anything", () => {
    expect(
      assign(
        2,
        2,
        edgesOf([
          [0, -1],
          [-2, -3],
        ]),
      ).columnOf,
    ).toEqual([-1, -1]);
    expect(assign(0, 0, []).columnOf).toEqual([]);
  });

  test("takes in a full square of 300", () => {
    let state = 7;
    const weights = Array.from({ length: 300 }, () =>
      Array.from({ length: 300 }, () => {
        state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
        return 0.1 + (8 * state) / 2 ** 32;
      }),
    );
    expect(assign(300, 300, edgesOf(weights)).columnOf).not.toContain(-1);
  });
});
