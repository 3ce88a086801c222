import { afterParting, FIRST_LOOPS, firstLoops } from "@good-grounds/tables";
import { describe, expect, test } from "vitest";

const PULSATANCE = 2 * Math.PI * 50;

/**
 * Energy of the first `loops` loops of a fault current of 1 A r.m.s. that starts at an angle of the voltage, A²s. Zeros
 * before `parted`, in s, end nothing.
 */
function carried(powerFactor: number, angle: number, loops: 1 | 2, parted = 1e-3): number {
  const phase = Math.acos(powerFactor);
  const constant = Math.tan(phase) / PULSATANCE;
  // L·di/dt + R·i = u, stepped by Heun's rule: nothing is taken from the closed form of the table.
  const impedance = 1;
  const resistance = impedance * powerFactor;
  const inductance = resistance * constant;
  const step = 2e-6;
  const rate = (current: number, time: number) =>
    (Math.SQRT2 * impedance * Math.sin(PULSATANCE * time + angle) - resistance * current) / inductance;
  let current = 0;
  let energy = 0;
  let zeros = 0;
  for (let time = 0; time < 0.05; time += step) {
    const first = rate(current, time);
    const next = current + (step * (first + rate(current + step * first, time + step))) / 2;
    if (time > parted && Math.sign(next) !== Math.sign(current)) {
      zeros += 1;
      if (zeros === loops) return energy;
    }
    energy += (step * (current ** 2 + next ** 2)) / 2;
    current = next;
  }
  throw new Error("the current has no zero");
}

describe("first loops of a fault current, by integrating the circuit", () => {
  test.each(FIRST_LOOPS)("at power factor $powerFactor", ({ powerFactor, one, two, upTo }) => {
    for (const [loops, bound] of [
      [1, one],
      [2, two],
    ] as const) {
      const worst = Math.max(
        ...Array.from({ length: 30 }, (_, i) => carried(powerFactor, (-90 + 6 * i) * (Math.PI / 180), loops)),
      );
      expect(worst).toBeLessThanOrEqual(bound);
      expect(worst, "no more than a fiftieth is left").toBeGreaterThan(bound * 0.98);
      expect(firstLoops(upTo, loops)?.value).toBe(bound);
    }
  });

  test.each(FIRST_LOOPS)(
    "contacts that part within 5 ms, at power factor $powerFactor",
    ({ powerFactor, parted, upTo }) => {
      const angles = Array.from({ length: 60 }, (_, i) => (-90 + 3 * i) * (Math.PI / 180));
      const worst = Math.max(
        ...[1, 3, 5].flatMap((ms) => angles.map((one) => carried(powerFactor, one, 1, ms / 1000))),
      );
      expect(worst).toBeLessThanOrEqual(parted);
      expect(worst, "no more than a fiftieth is left").toBeGreaterThan(parted * 0.98);
      expect(afterParting(upTo)?.value).toBe(parted);
    },
  );

  test("a loop of less inductance carries less", () => {
    const worst = (powerFactor: number) =>
      Math.max(...Array.from({ length: 15 }, (_, i) => carried(powerFactor, (-90 + 12 * i) * (Math.PI / 180), 1)));
    expect(worst(0.98)).toBeLessThan(worst(0.9));
    expect(worst(0.9)).toBeLessThan(worst(0.7));
  });

  test("above 10 kA nothing is said", () => {
    expect(firstLoops(10_001, 1)).toBeUndefined();
    expect(afterParting(10_001)).toBeUndefined();
  });
});
