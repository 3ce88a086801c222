import type { Verdict } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { type Drawn, radial, ring } from "./agreement-alarms.ts";

const RUNS = 400;

const SOUND: Drawn = { joint: 0, cpcInPlace: 1.5, lengthOf: (metres) => Math.round(metres) };

/** Parts of circuits whose check is not met, and neither met nor not met. */
function told(drawn: Drawn) {
  const chance = new Chance(61_010);
  const verdicts: Record<string, Verdict[]> = { zs: [], r1r2: [], ring: [] };
  for (let k = 0; k < RUNS; k++) {
    const { "zs-agreement": zs, "r1r2-length": r1r2 } = radial(drawn, chance);
    verdicts.zs?.push(zs);
    verdicts.r1r2?.push(r1r2);
    verdicts.ring?.push(ring(drawn, chance));
  }
  const part = (verdict: Verdict) =>
    Object.fromEntries(
      Object.entries(verdicts).map(([name, list]) => [name, list.filter((one) => one === verdict).length / RUNS]),
    ) as Record<"zs" | "r1r2" | "ring", number>;
  return { notMet: part("not-met"), tooNear: part("too-near") };
}

describe("readings by hand, without a word on the instruments", () => {
  test.each([
    ["to the metre", (metres: number) => Math.round(metres)],
    ["within 3 %", (metres: number, chance: Chance) => metres * chance.between(0.97, 1.03)],
    ["within 10 %", (metres: number, chance: Chance) => metres * chance.between(0.9, 1.1)],
    ["10 % as a standard deviation", (metres: number, chance: Chance) => metres * (1 + chance.normal(0, 0.1))],
  ])("sound circuits with lengths %s are hardly ever not met, or too near", (_, lengthOf) => {
    const { notMet, tooNear } = told({ ...SOUND, lengthOf });
    for (const part of Object.values(notMet)) expect(part).toBeLessThanOrEqual(0.01);
    for (const part of Object.values(tooNear)) expect(part).toBeLessThanOrEqual(0.02);
  });

  test("a joint of 0.30 Ω is convicted in a ring, and told in a radial of usual length", () => {
    const { notMet, tooNear } = told({ ...SOUND, joint: 0.3 });
    expect(notMet.ring).toBeGreaterThan(0.97);
    expect(notMet.zs + tooNear.zs).toBeGreaterThan(0.5);
  });

  test("1 mm² where 1.5 mm² is written is convicted in a ring, and in a radial whose length was taped", () => {
    const { notMet, tooNear } = told({ ...SOUND, cpcInPlace: 1, found: "taped" });
    expect(notMet.ring).toBeGreaterThan(0.97);
    expect(notMet.r1r2 + tooNear.r1r2).toBeGreaterThan(0.9);
  });
});
