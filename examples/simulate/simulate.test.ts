import { parseAccuracy, parseWritten, type Unit } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { perMetre } from "./cable.ts";
import { Chance } from "./chance.ts";
import { offsetOn } from "./clock.ts";
import type { TrueCircuit } from "./installation.ts";
import { ACCURACY, Instrument } from "./instrument.ts";
import { crossConnected, readingsOf } from "./physics.ts";

const seeds = fc.integer({ min: 0, max: 2 ** 31 });
const ohms = fc.double({ min: 0.05, max: 3, noNaN: true });

/** Potential of the first of the unknown nodes of a resistor network with a unit current into it, by elimination. */
function resistanceBetween(
  from: number,
  to: number,
  nodes: number,
  branches: readonly (readonly [number, number, number])[],
) {
  const unknown = Array.from({ length: nodes }, (_, i) => i).filter((i) => i !== to);
  const rows = unknown.map((i) => unknown.map((j) => conductance(i, j, branches)).concat(i === from ? 1 : 0));
  for (const [k, pivot] of rows.entries()) {
    for (const row of rows.slice(k + 1)) {
      const factor = (row[k] ?? 0) / (pivot[k] ?? 1);
      for (const [j, value] of pivot.entries()) row[j] = (row[j] ?? 0) - factor * value;
    }
  }
  const potentials: number[] = [];
  for (const [k, row] of [...rows.entries()].reverse()) {
    const rest = unknown
      .slice(k + 1)
      .reduce((sum, _, j) => sum + (row[k + 1 + j] ?? 0) * (potentials[k + 1 + j] ?? 0), 0);
    potentials[k] = ((row.at(-1) ?? 0) - rest) / (row[k] ?? 1);
  }
  return potentials[unknown.indexOf(from)] ?? Number.NaN;
}

function conductance(i: number, j: number, branches: readonly (readonly [number, number, number])[]): number {
  return branches.reduce((sum, [a, b, r]) => {
    if (i === j) return sum + (a === i || b === i ? 1 / r : 0);
    return sum - ((a === i && b === j) || (a === j && b === i) ? 1 / r : 0);
  }, 0);
}

describe("a cross-connected ring", () => {
  test("reads at every point what the network of its four lengths of conductor gives", () => {
    fc.assert(
      fc.property(ohms, ohms, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (a, b, x) => {
        // 0 and 1: the two cross-connections at the board; 2 and 3: the two terminals at the point.
        const network = [
          [0, 2, x * a],
          [2, 1, (1 - x) * a],
          [1, 3, x * b],
          [3, 0, (1 - x) * b],
        ] as const;
        const solved = resistanceBetween(2, 3, 4, network);
        expect(Math.abs(crossConnected(a, b, x) - solved) / solved).toBeLessThan(1e-9);
      }),
    );
  });

  test("reads a quarter of both ends half way round, and the same everywhere where both conductors are alike", () => {
    expect(crossConnected(0.44, 0.72, 0.5)).toBeCloseTo((0.44 + 0.72) / 4, 12);
    for (const x of [0, 0.1, 0.5, 0.77, 1]) expect(crossConnected(0.44, 0.44, x)).toBeCloseTo(0.22, 12);
  });
});

const radial = (more: Partial<TrueCircuit> = {}): TrueCircuit => ({
  id: "c1",
  name: "radial",
  shape: "radial",
  load: "fixed-equipment",
  device: { standard: "BS EN 60898", rated: 16 },
  rcd: "none",
  cable: { kind: "flat-twin-and-cpc", line: 2.5, cpc: 1.5, length: 20, methods: ["C"] },
  ...more,
});
const at = (circuit: TrueCircuit, seed = 1) => readingsOf(circuit, { earth: 0.2, neutral: 0.15 }, 20, new Chance(seed));

describe("the resistances of a circuit", () => {
  test("lie a few per cent below length times the greatest resistance of BS EN 60228", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { r1r2 } = at(radial(), seed);
        // 20 m of 7.41 + 12.1 mΩ/m; conductors 3 % below with 1 %: six standard deviations either way.
        expect(r1r2 / (0.02 * 19.51)).toBeGreaterThan(0.91);
        expect(r1r2 / (0.02 * 19.51)).toBeLessThan(1.03);
      }),
    );
  });

  test("add up to Zs, and a bad joint is in both", () => {
    for (const circuit of [radial(), radial({ joint: 0.5 })]) {
      const { r1r2, zs } = at(circuit);
      expect(zs).toBeCloseTo(0.2 + r1r2, 12);
    }
    expect(at(radial({ joint: 0.5 })).r1r2 - at(radial()).r1r2).toBeCloseTo(0.5, 12);
  });

  test("a second way to earth lowers Zs and leaves the dead tests alone", () => {
    const [plain, bonded] = [at(radial()), at(radial({ parallelPath: 0.1 }))];
    expect(bonded.r1r2).toBe(plain.r1r2);
    expect(bonded.zs).toBeLessThan(plain.zs);
    expect(bonded.zs).toBeGreaterThan(plain.zs - plain.r1r2);
  });

  test("a ring reads a quarter at the far side, a spur adds its whole length", () => {
    const ring = radial({ shape: "ring", ringPoints: [0.5] });
    const { ring: ends, r1r2 } = at(ring);
    expect(r1r2).toBeCloseTo(((ends?.r1 ?? 0) + (ends?.r2 ?? 0)) / 4, 12);
    const spurred = at({ ...ring, spur: 5 });
    const share = 5 / 20;
    expect(spurred.r1r2 - r1r2).toBeCloseTo(share * ((ends?.r1 ?? 0) + (ends?.r2 ?? 0)), 12);
  });

  test("conductors are warmer with 0.4 % for each kelvin, and no other size is made up", () => {
    expect(perMetre(6, 45, new Chance(3)) / perMetre(6, 20, new Chance(3))).toBeCloseTo(1.1, 12);
    expect(() => perMetre(7, 20, new Chance(3))).toThrow("no conductor of 7 mm²");
  });

  test("conductors spread 1 % about 3 % below the greatest resistance", () => {
    const chance = new Chance(11);
    const parts = Array.from({ length: 4000 }, () => perMetre(2.5, 20, chance) / 0.00741);
    const mean = parts.reduce((sum, part) => sum + part, 0) / parts.length;
    const spread = Math.sqrt(parts.reduce((sum, part) => sum + (part - mean) ** 2, 0) / parts.length);
    expect(mean).toBeCloseTo(0.97, 3);
    expect(spread).toBeCloseTo(0.01, 3);
  });
});

describe("an instrument", () => {
  const shows = <U extends Unit>(
    unit: U,
    range: keyof typeof ACCURACY,
    show: (meter: Instrument, truth: number) => string,
    truths: fc.Arbitrary<number>,
  ) =>
    fc.assert(
      fc.property(seeds, truths, (seed, truth) => {
        const written = parseWritten(show(new Instrument(new Chance(seed)), truth), unit);
        const accuracy = parseAccuracy(ACCURACY[range]);
        if ("code" in written || accuracy === undefined) throw new Error("not a reading");
        // Half of the stated accuracy, and half a digit for the display.
        const allowed =
          0.5 * (truth * accuracy.ofReading + accuracy.digits * written.resolution) + 0.5 * written.resolution;
        expect(Math.abs(written.value - truth)).toBeLessThanOrEqual(allowed * (1 + 1e-9));
      }),
    );
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  test("shows continuity within its accuracy", () => {
    shows("ohm", "continuity", (meter, truth) => meter.continuity(truth), between(0.05, 50));
  });
  test("shows a loop within its accuracy, on both of its ranges", () => {
    shows("ohm", "loop", (meter, truth) => meter.loop(truth), between(0.05, 99));
    shows("ohm", "loop", (meter, truth) => meter.loop(truth), between(101, 900));
  });
  test("shows insulation within its accuracy", () => {
    shows("ohm", "insulation", (meter, truth) => meter.insulation(truth), between(1e4, 19e6));
    shows("ohm", "insulation", (meter, truth) => meter.insulation(truth), between(21e6, 980e6));
  });
  test("shows times, fault currents and volts within its accuracy", () => {
    shows("second", "rcd-time", (meter, truth) => meter.rcdTime(truth), between(0.005, 0.5));
    shows("ampere", "fault-current", (meter, truth) => meter.faultCurrent(truth), between(200, 9000));
    shows("volt", "voltage", (meter, truth) => meter.volts(truth), between(200, 260));
  });
  test("ends its range where its display ends", () => {
    const meter = new Instrument(new Chance(1));
    expect(meter.insulation(1e9)).toBe(">999 MΩ");
    expect(meter.continuity(Number.POSITIVE_INFINITY)).toBe(">99.9 Ω");
  });
});

describe("British time", () => {
  test.each([
    ["2026-03-28", "+00:00"],
    ["2026-03-29", "+01:00"],
    ["2026-10-24", "+01:00"],
    ["2026-10-25", "+00:00"],
    ["2027-03-28", "+01:00"],
    ["2027-10-31", "+00:00"],
    ["2027-10-30", "+01:00"],
  ])("on %s is %s", (day, offset) => {
    expect(offsetOn(day)).toBe(offset);
  });
});
