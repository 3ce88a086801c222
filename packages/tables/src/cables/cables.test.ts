import { type Evidence, GROUPINGS, type Grouping, type Insulation, isKnown } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { RESISTANCES } from "../conductors/index.ts";
import {
  AMBIENT,
  ambientFactor,
  CAPACITY_TABLES,
  GROUP_SIZES,
  GROUPING_FACTORS,
  groundFactor,
  groupingFactor,
  lightlyLoadedPart,
  permittedDrop,
  permittedDropAddition,
  semiEnclosedFactor,
  tabulatedCapacity,
  tabulatedDrop,
  thermalInsulationFactor,
} from "./index.ts";

describe("current-carrying capacity", () => {
  test("grows with size in every column of every table", () => {
    for (const { number, rows } of CAPACITY_TABLES) {
      for (let i = 1; i < rows.length; i++) {
        const [before, row] = [rows[i - 1], rows[i]];
        if (before === undefined || row === undefined) throw new Error("row missing");
        for (const [method, loaded, amperes] of row.capacities) {
          const smaller = before.capacities.find(([m, n]) => m === method && n === loaded);
          if (smaller !== undefined) expect(amperes, `${number} ${method} ${row.size}`).toBeGreaterThan(smaller[2]);
        }
      }
    }
  });

  test("three loaded conductors carry less than two; clipped direct more than in an insulated wall", () => {
    for (const { rows } of CAPACITY_TABLES) {
      for (const { capacities } of rows) {
        const of = (method: string, loaded: number) => capacities.find(([m, n]) => m === method && n === loaded)?.[2];
        for (const method of ["A", "B", "C", "D", "E"]) {
          const [two, three] = [of(method, 2), of(method, 3)];
          if (two !== undefined && three !== undefined) expect(three).toBeLessThan(two);
        }
        const [a, c] = [of("A", 2), of("C", 2)];
        if (a !== undefined && c !== undefined) expect(a).toBeLessThan(c);
      }
    }
  });

  test("aluminium, unknown sizes and methods are not tabulated", () => {
    const cable = {
      kind: "flat-twin-and-cpc",
      insulation: "70C-thermoplastic",
      material: "copper",
      method: "C",
      area: 2.5,
      loadedConductors: 2,
    } as const;
    for (const change of [
      { material: "aluminium" as const },
      { area: 3 },
      { method: "D" as const },
      { loadedConductors: 3 as const },
      { kind: "rubber" as const },
    ]) {
      expect(isKnown(tabulatedCapacity({ ...cable, ...change }))).toBe(false);
    }
  });
});

describe("voltage drop", () => {
  test("is 2·r or √3·r at operating temperature within 3 % up to 16 mm²: rounding to two figures makes most of it", () => {
    const resistance = new Map(RESISTANCES.map(([size, , stranded]) => [size, stranded]));
    for (const { kind, insulation, rows } of CAPACITY_TABLES) {
      const hot = insulation === "90C-thermosetting" ? 1.28 : 1.2;
      for (const { size } of rows) {
        if (size > 16) continue;
        for (const loadedConductors of [2, 3] as const) {
          const found = tabulatedDrop({ kind, insulation, material: "copper", area: size, loadedConductors });
          if (!isKnown(found)) continue;
          const expected = (loadedConductors === 2 ? 2 : Math.sqrt(3)) * (resistance.get(size) ?? Number.NaN) * hot;
          expect(Math.abs((found.value * 1000) / expected - 1), `${kind} ${size}`).toBeLessThan(0.03);
        }
      }
    }
  });

  test("on a long run the permitted part grows by 0.005 % a metre beyond 100 m, to half a per cent", () => {
    const part = (metres: number) => permittedDropAddition(metres).value;
    expect([0, 100, 101, 150, 200, 1000].map(part)).toEqual([0, 0, 0.00005, 0.0025, 0.005, 0.005]);
    expect(permittedDropAddition(150)).toMatchObject({ detail: { source: { basis: "memory" } } });
    for (const metres of [-1, Number.NaN]) expect(isKnown(permittedDropAddition(metres))).toBe(false);
  });

  test("permitted parts are 3 and 5 %, 6 and 8 % for private supplies", () => {
    const of = (supply: "public" | "private", use: "lighting" | "other") => permittedDrop({ supply, use }).value;
    expect([
      of("public", "lighting"),
      of("public", "other"),
      of("private", "lighting"),
      of("private", "other"),
    ]).toEqual([0.03, 0.05, 0.06, 0.08]);
  });
});

describe("rating factors", () => {
  test("grouping factors are the copied ones", () => {
    const of = (arrangement: Grouping) => GROUP_SIZES.map((circuits) => groupingFactor(arrangement, circuits).value);
    const none = [Number.NaN, Number.NaN, Number.NaN];
    expect(of("bunched")).toEqual([1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5, 0.45, 0.41, 0.38]);
    expect(of("single-layer-surface")).toEqual([1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.7, ...none]);
    expect(of("single-layer-tray")).toEqual([1, 0.88, 0.82, 0.77, 0.75, 0.73, 0.73, 0.72, 0.72, ...none]);
    expect(of("single-layer-ladder")).toEqual([1, 0.87, 0.82, 0.8, 0.8, 0.79, 0.79, 0.78, 0.78, ...none]);
  });

  test("ambient factors are the copied ones", () => {
    const of = (insulation: Insulation) =>
      Array.from({ length: 13 }, (_, i) => ambientFactor(insulation, 25 + 5 * i).value);
    const none = (count: number) => Array<number>(count).fill(Number.NaN);
    expect(of("70C-thermoplastic")).toEqual([1.03, 1, 0.94, 0.87, 0.79, 0.71, 0.61, 0.5, ...none(5)]);
    const hot = [1.02, 1, 0.96, 0.91, 0.87, 0.82, 0.76, 0.71, 0.65, 0.58, 0.5, 0.41, ...none(1)];
    expect(of("90C-thermosetting")).toEqual(hot);
    expect(of("90C-thermoplastic")).toEqual(hot);
  });

  test("ambient factors above 30 °C follow the square-root rule to two decimals", () => {
    for (const [operating, steps] of Object.entries(AMBIENT)) {
      for (const [celsius, factor] of steps) {
        if (celsius < 30) continue;
        const rule = Math.sqrt((Number(operating) - celsius) / (Number(operating) - 30));
        expect(Math.abs(rule - factor), `${operating} ${celsius}`).toBeLessThanOrEqual(0.0061);
      }
    }
  });

  test("between the steps the warmer one is taken, beyond the last there is none", () => {
    expect(ambientFactor("70C-thermoplastic", 36).value).toBe(0.87);
    expect(ambientFactor("70C-thermoplastic", 10).value).toBe(1.03);
    expect(ambientFactor("90C-thermosetting", 80).value).toBe(0.41);
    expect(isKnown(ambientFactor("70C-thermoplastic", 61))).toBe(false);
    expect(isKnown(ambientFactor("mineral-bare", 30))).toBe(false);
    expect(isKnown(ambientFactor("70C-thermoplastic", Number.NaN))).toBe(false);
  });

  test("what is read off a neighbouring step is derived, and from memory where the step is", () => {
    const basis = (node: Evidence<"ratio">) => (node.kind === "published" ? node.detail.source.basis : undefined);
    expect([40, 36, 25, 10, 30].map((celsius) => basis(ambientFactor("70C-thermoplastic", celsius)))).toEqual([
      "published",
      "derived",
      "memory",
      "memory",
      "derived",
    ]);
    expect([8, 7.5, 7, 10, 1].map((circuits) => basis(groupingFactor("bunched", circuits)))).toEqual([
      "published",
      "derived",
      "memory",
      "memory",
      "derived",
    ]);
    expect([0, 60, 100, 450, 500, 900].map((length) => basis(thermalInsulationFactor(length)))).toEqual([
      "derived",
      "memory",
      "memory",
      "derived",
      "published",
      "published",
    ]);
  });

  test("below 30 °C the remembered factors lie under the square-root rule: on the safe side", () => {
    expect(Math.sqrt(45 / 40) - ambientFactor("70C-thermoplastic", 25).value).toBeCloseTo(0.031, 3);
    expect(Math.sqrt(65 / 60) - ambientFactor("90C-thermosetting", 25).value).toBeCloseTo(0.021, 3);
  });

  test("no factor falls as a cable gets cooler, is less grouped or less surrounded", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (t, by) => {
          const [cool, warm] = [ambientFactor("70C-thermoplastic", t), ambientFactor("70C-thermoplastic", t + by)];
          if (isKnown(warm)) expect(cool.value).toBeGreaterThanOrEqual(warm.value);
        },
      ),
    );
    fc.assert(
      fc.property(fc.constantFrom(...GROUPINGS), fc.integer({ min: 1, max: 20 }), (arrangement, circuits) => {
        const more = groupingFactor(arrangement, circuits + 1);
        if (isKnown(more)) expect(groupingFactor(arrangement, circuits).value).toBeGreaterThanOrEqual(more.value);
      }),
    );
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 900, noNaN: true }),
        (mm, by) => {
          expect(thermalInsulationFactor(mm).value).toBeGreaterThanOrEqual(thermalInsulationFactor(mm + by).value);
        },
      ),
    );
  });

  test("look-ups hand out the same node each time", () => {
    const cable = {
      kind: "singles",
      insulation: "70C-thermoplastic",
      material: "copper",
      method: "B",
      area: 4,
      loadedConductors: 2,
    } as const;
    expect(tabulatedCapacity(cable)).toBe(tabulatedCapacity({ ...cable }));
    expect(tabulatedDrop(cable)).toBe(tabulatedDrop({ ...cable }));
    expect(ambientFactor("70C-thermoplastic", 36)).toBe(ambientFactor("70C-thermoplastic", 39));
    expect(groupingFactor("bunched", 10)).toBe(groupingFactor("bunched", 11));
    expect(permittedDropAddition(140)).toBe(permittedDropAddition(140));
  });

  test("grouping factors fall with the number of circuits, and between columns the larger number is taken", () => {
    for (const arrangement of GROUPINGS) {
      const factors = GROUPING_FACTORS[arrangement];
      expect(factors[0]).toBe(1);
      for (let i = 1; i < factors.length; i++)
        expect(factors[i] as number).toBeLessThanOrEqual(factors[i - 1] as number);
      expect(factors.length).toBeLessThanOrEqual(GROUP_SIZES.length);
    }
    expect(groupingFactor("bunched", 10).value).toBe(groupingFactor("bunched", 12).value);
    expect(isKnown(groupingFactor("bunched", 21))).toBe(false);
    expect(isKnown(groupingFactor("single-layer-tray", 10))).toBe(false);
    expect(isKnown(groupingFactor("bunched", 0))).toBe(false);
    expect(lightlyLoadedPart).toMatchObject({ value: 0.3, detail: { source: { basis: "memory" } } });
  });

  test("factors of the ground are 1 at 20 °C, as read in IEC 60364-5-52 elsewhere, and safe between the steps", () => {
    const row = (insulation: "70C-thermoplastic" | "90C-thermosetting") =>
      [10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60].map((celsius) => groundFactor(insulation, celsius).value);
    expect(row("70C-thermoplastic")).toEqual([1.1, 1.05, 1, 0.95, 0.89, 0.84, 0.77, 0.71, 0.63, 0.55, 0.45]);
    expect(row("90C-thermosetting")).toEqual([1.07, 1.04, 1, 0.96, 0.93, 0.89, 0.85, 0.8, 0.76, 0.71, 0.65]);
    expect(groundFactor("70C-thermoplastic", 21).value).toBe(0.95);
    expect(groundFactor("70C-thermoplastic", 4).value).toBe(1.1);
    expect(isKnown(groundFactor("70C-thermoplastic", 61))).toBe(false);
  });

  test("insulation factors fall with length to one half", () => {
    const lengths = [0, 50, 100, 200, 400, 500, 5000].map((length) => thermalInsulationFactor(length).value);
    expect(lengths).toEqual([1, 0.88, 0.78, 0.63, 0.51, 0.5, 0.5]);
    expect(thermalInsulationFactor(51).value).toBe(0.78);
    expect(semiEnclosedFactor.value).toBe(1.45 / 2);
  });
});
