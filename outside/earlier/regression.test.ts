import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { predictionBand } from "../../packages/readings/src/earlier/trend/band.ts";
import { fitLine, type Sample } from "../../packages/readings/src/earlier/trend/line.ts";
import { studentWithin } from "../../packages/readings/src/earlier/trend/student.ts";
import { needTool } from "../tools.ts";
import { type Asked, askOutside } from "./regression.ts";

/** Each is a search of the library within a search: enough to cover one and several ended displays, few enough to wait for. */
const CENSORED = 12;

const tools = needTool("scipy") && needTool("statsmodels");

/** Readings of a falling resistance over the years; with `ended`, those above the end of the display are bounds. */
function random(chance: Chance, ended: boolean): Asked {
  const count = 2 + Math.floor(chance.between(0, 6)) + (ended ? 2 : 0);
  const [start, slope] = [chance.between(15, 22), chance.between(-0.6, 0.2)];
  const end = Math.log(999e6);
  const samples = Array.from({ length: count }, (_, k): Sample => {
    const time = -5 * (count - 1 - k) + chance.between(-1, 1);
    const deviation = chance.between(0.2, 0.8);
    const level = chance.normal(start + slope * time, deviation);
    return ended && level > end
      ? { time, level: end, deviation, bound: "above" }
      : { time, level, deviation, bound: "exact" };
  });
  return { samples, time: chance.between(0, 10), deviation: 0.6, reach: chance.between(1.5, 3) };
}

describe("lines and bands", () => {
  const chance = new Chance(77);
  const weighted = Array.from({ length: 200 }, () => random(chance, false));
  const censored = Array.from({ length: 200 }, () => random(chance, true)).filter(
    ({ samples }) =>
      samples.some(({ bound }) => bound === "above") && samples.filter(({ bound }) => bound === "exact").length >= 2,
  );
  const student = [0.5, 0.9, 0.95, 0.99, 0.999].flatMap((assurance) =>
    [1, 2, 5, 6, 7, 10, 30, 200].map((freedom) => [assurance, freedom] as const),
  );

  test.skipIf(!tools)("agree with statsmodels, and with scipy where displays have ended", () => {
    expect(censored.length).toBeGreaterThan(CENSORED);
    const answers = askOutside({ weighted, censored: censored.slice(0, CENSORED), student });
    for (const [i, asked] of weighted.entries()) {
      const line = fitLine(asked.samples);
      const [low, high] = predictionBand(asked.samples, line, asked.time, asked.deviation, asked.reach);
      const found = answers.weighted[i];
      for (const [ours, theirs] of [
        [line.start, found?.start],
        [line.slope, found?.slope],
        [low, found?.low],
        [high, found?.high],
      ] as const)
        expect(Math.abs((ours as number) - (theirs as number))).toBeLessThan(
          1e-8 * Math.max(1, Math.abs(ours as number)),
        );
    }
    for (const [i, asked] of censored.slice(0, CENSORED).entries()) {
      const line = fitLine(asked.samples);
      const found = answers.censored[i];
      expect(line.deviance).toBeLessThanOrEqual((found?.deviance ?? 0) + 1e-7);
      expect(line.start).toBeCloseTo(found?.start ?? Number.NaN, 3);
      expect(line.slope).toBeCloseTo(found?.slope ?? Number.NaN, 4);
      const [low, high] = predictionBand(asked.samples, line, asked.time, asked.deviation, asked.reach);
      if (found?.low === null) expect(low).toBe(Number.NEGATIVE_INFINITY);
      else expect(low).toBeCloseTo(found?.low ?? Number.NaN, 3);
      if (found?.high === null) expect(high).toBe(Number.POSITIVE_INFINITY);
      else expect(high).toBeCloseTo(found?.high ?? Number.NaN, 3);
    }
    for (const [i, [assurance, freedom]] of student.entries())
      expect(studentWithin(assurance, freedom) / (answers.student[i] ?? Number.NaN)).toBeCloseTo(1, 8);
  });

  test("Student's t is exact where there is a formula", () => {
    for (const assurance of [0.5, 0.9, 0.95, 0.99, 0.999]) {
      expect(studentWithin(assurance, 1) / Math.tan((Math.PI * assurance) / 2)).toBeCloseTo(1, 11);
      expect(studentWithin(assurance, 2) / (assurance * Math.sqrt(2 / (1 - assurance ** 2)))).toBeCloseTo(1, 11);
    }
  });
});
