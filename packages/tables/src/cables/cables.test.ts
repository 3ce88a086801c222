import { GROUPINGS, isKnown } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { RESISTANCES } from "../conductors/index.ts";
import {
  AMBIENT,
  ambientFactor,
  CAPACITY_TABLES,
  GROUP_SIZES,
  GROUPING_FACTORS,
  groupingFactor,
  permittedDrop,
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

  test.each([
    ["flat-twin-and-cpc", "70C-thermoplastic", "C", 2.5, 2, 27],
    ["flat-twin-and-cpc", "70C-thermoplastic", "101", 6, 2, 27],
    ["flat-twin-and-cpc", "70C-thermoplastic", "103", 2.5, 2, 13.5],
    ["singles", "70C-thermoplastic", "B", 4, 2, 32],
    ["multicore", "70C-thermoplastic", "C", 10, 3, 57],
    ["armoured", "90C-thermosetting", "D", 4, 2, 43],
  ] as const)(
    "%s, %s, method %s, %d mm², %i loaded: %d A",
    (kind, insulation, method, area, loadedConductors, amperes) => {
      expect(tabulatedCapacity({ kind, insulation, material: "copper", method, area, loadedConductors }).value).toBe(
        amperes,
      );
    },
  );

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

  test("cells that were seen and cells from memory are told apart", () => {
    const basis = (area: number, method: "C" | "100") => {
      const found = tabulatedCapacity({
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        method,
        area,
        loadedConductors: 2,
      });
      return found.kind === "published" ? found.detail.source.basis : undefined;
    };
    expect([basis(2.5, "C"), basis(2.5, "100"), basis(1, "100")]).toEqual(["published", "memory", "published"]);
  });
});

describe("voltage drop", () => {
  test("is 2·r or √3·r at operating temperature within 3 % up to 16 mm²", () => {
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
    expect(ambientFactor("70C-thermoplastic", 36).value).toBe(ambientFactor("70C-thermoplastic", 40).value);
    expect(ambientFactor("70C-thermoplastic", 10).value).toBe(ambientFactor("70C-thermoplastic", 25).value);
    expect(isKnown(ambientFactor("70C-thermoplastic", 61))).toBe(false);
    expect(isKnown(ambientFactor("mineral-bare", 30))).toBe(false);
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
    expect(isKnown(groupingFactor("bunched", 0))).toBe(false);
  });

  test("insulation factors fall with length to one half", () => {
    const lengths = [0, 50, 100, 200, 400, 500, 5000].map((length) => thermalInsulationFactor(length).value);
    expect(lengths).toEqual([1, 0.88, 0.78, 0.63, 0.51, 0.5, 0.5]);
    expect(thermalInsulationFactor(51).value).toBe(0.78);
    expect(semiEnclosedFactor.value).toBe(1.45 / 2);
  });
});
