import { describe, expect, test } from "vitest";
import { CLEAR, exactly, POSSIBLE, residualOf, sumOf, twoSided, within } from "./index.ts";

/** A small generator of even numbers between −1 and 1, the same every time. */
function evenly(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 31 - 1;
  };
}

describe("two accounts of one thing", () => {
  test("the thresholds are those of their chances", () => {
    for (const { chance, deviations } of [CLEAR, POSSIBLE]) expect(twoSided(deviations) / chance).toBeCloseTo(1, 3);
  });

  test("of sound accounts no more than the stated part is called a misfit, whatever mix of errors they have", () => {
    const draw = evenly(20_261_130);
    const runs = 60_000;
    let [possible, clear] = [0, 0];
    for (let k = 0; k < runs; k++) {
      const limits = [1, 0.6, 0.5, 0.3, 0.2].map((limit) => limit * (0.5 + Math.abs(draw())));
      const off = limits.reduce((sum, limit) => sum + limit * draw(), 0);
      const account = sumOf(...limits.map((limit, i) => within(i === 0 ? 10 + off : 0, limit, {})));
      const { verdict } = residualOf(account, exactly(10));
      if (verdict !== "met") possible++;
      if (verdict === "not-met") clear++;
    }
    expect(possible / runs).toBeLessThan(POSSIBLE.chance);
    expect(clear / runs).toBeLessThan(CLEAR.chance);
  });

  test("an error that both share is none between them", () => {
    const shared = {};
    const residual = residualOf(within(1, 0.5, shared), within(1.2, 0.5, shared));
    expect(residual).toMatchObject({ standard: 0, verdict: "not-met" });
    expect(residualOf(within(1, 0.5, {}), within(1.2, 0.5, {})).verdict).toBe("met");
  });

  test("one side only: what lies on the other is no misfit", () => {
    const [low, high] = [exactly(1), within(9, 0.1, {})];
    expect(residualOf(low, high, "not-above").verdict).toBe("met");
    expect(residualOf(low, high, "not-below").verdict).toBe("not-met");
  });

  test("an open end reaches whatever lies beyond it, and nothing before it", () => {
    const beyond = { ...exactly(99.9), open: 1 };
    expect(residualOf(beyond, within(0.44, 0.05, {})).verdict).toBe("not-met");
    expect(residualOf(beyond, exactly(120)).verdict).toBe("met");
  });

  test("decimals as typed that are equal agree without any doubt", () => {
    expect(residualOf(exactly(0.1 + 0.2), exactly(0.3)).verdict).toBe("met");
  });
});
