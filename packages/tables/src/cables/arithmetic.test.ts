import type { ReferenceMethod } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { CAPACITY_TABLES } from "./index.ts";

/** A column of a capacity table: A by size in mm². */
type Column = readonly (readonly [size: number, amperes: number])[];

function column(table: string, method: ReferenceMethod, loaded: 2 | 3): Column {
  const rows = CAPACITY_TABLES.find(({ number }) => number === table)?.rows ?? [];
  return rows.flatMap(({ size, capacities }) =>
    capacities.filter(([m, n]) => m === method && n === loaded).map(([, , amperes]) => [size, amperes] as const),
  );
}

const COLUMNS = CAPACITY_TABLES.flatMap(({ number, rows }) =>
  (rows[0]?.capacities ?? []).map(([method, loaded]) => ({
    name: `${number} ${method}, ${loaded} loaded`,
    cells: column(number, method, loaded),
  })),
);

/** The line of least squares through ln S and ln I: capacity is a power of size, I = a·Sᵐ. */
function power(cells: Column): { exponent: number; at: (size: number) => number } {
  const points = cells.map(([size, amperes]) => [Math.log(size), Math.log(amperes)] as const);
  const mean = (i: 0 | 1) => points.reduce((sum, point) => sum + point[i], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const exponent =
    points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0) /
    points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
  return { exponent, at: (size) => Math.exp(y + exponent * (Math.log(size) - x)) };
}

describe("capacities against what physics makes of them", () => {
  test.each(COLUMNS)("$name: is a power of size within 4 % in every cell", ({ cells }) => {
    const { exponent, at } = power(cells);
    expect(cells.length).toBeGreaterThanOrEqual(7);
    // Between a wire cooled by its surface in still air and one in the ground or in insulation.
    expect(exponent).toBeGreaterThan(0.5);
    expect(exponent).toBeLessThan(0.65);
    for (const [size, amperes] of cells) expect(Math.abs(amperes / at(size) - 1), `${size} mm²`).toBeLessThan(0.04);
  });

  test("4 mm² two-core armoured at 90 °C, buried: the rest of the column says 43 A, not 46 A", () => {
    const others = column("4E4", "D", 2).filter(([size]) => size !== 4);
    const expected = power(others).at(4);
    expect(Math.abs(expected - 43)).toBeLessThan(0.5);
    expect(46 / expected - 1).toBeGreaterThan(0.07);
  });

  test("heat balance of the two armoured tables: 70 °C cable carries what its lower temperature allows", () => {
    /** √ of the temperature rise over the resistance at that temperature; ground 20 °C, air 30 °C. */
    const allowed = (from: number) => Math.sqrt((70 - from) / 1.2 / ((90 - from) / 1.28));
    for (const method of ["C", "D", "E"] as const) {
      for (const loaded of [2, 3] as const) {
        const hot = new Map(column("4E4", method, loaded));
        for (const [size, amperes] of column("4D4", method, loaded)) {
          const part = amperes / (hot.get(size) ?? Number.NaN) / allowed(method === "D" ? 20 : 30);
          // A hotter surface sheds heat better than in proportion, so the cooler cable falls short a little.
          expect(part, `${method} ${loaded} ${size} mm²`).toBeLessThan(1.01);
          expect(part, `${method} ${loaded} ${size} mm²`).toBeGreaterThan(0.89);
        }
      }
    }
  });

  test("a multicore cable never carries more than single cores laid the same way, nor 15 % less", () => {
    for (const method of ["A", "B", "C"] as const) {
      for (const loaded of [2, 3] as const) {
        const singles = new Map(column("4D1", method, loaded));
        for (const [size, amperes] of column("4D2", method, loaded)) {
          const part = amperes / (singles.get(size) ?? Number.NaN);
          expect(part <= 1 && part > 0.85, `${method} ${loaded} ${size} mm²: ${part}`).toBe(true);
        }
      }
    }
  });

  test("flat twin clipped direct lies between multicore and a little above single cores", () => {
    const [multicore, singles] = [new Map(column("4D2", "C", 2)), new Map(column("4D1", "C", 2))];
    for (const [size, amperes] of column("4D5", "C", 2)) {
      expect(amperes, `${size} mm²`).toBeGreaterThanOrEqual(multicore.get(size) ?? Number.NaN);
      expect(amperes / (singles.get(size) ?? Number.NaN), `${size} mm²`).toBeLessThan(1.04);
    }
  });

  test("method 103 is half of clipped direct, but for 4 mm², which is below half", () => {
    const clipped = new Map(column("4D5", "C", 2));
    for (const [size, amperes] of column("4D5", "103", 2)) {
      const half = (clipped.get(size) ?? Number.NaN) / 2;
      if (size === 4) expect(amperes).toBe(half - 1);
      else expect(Math.abs(amperes - half), `${size} mm²`).toBeLessThanOrEqual(0.25);
    }
  });

  test("more insulation, less current: 101 below 100, 103 below 102, and none above clipped direct", () => {
    const of = (method: ReferenceMethod) => column("4D5", method, 2).map(([, amperes]) => amperes);
    const [clipped, over, deep, touching, apart] = (["C", "100", "101", "102", "103"] as const).map(of);
    for (const [i, amperes] of (clipped ?? []).entries()) {
      expect(deep?.[i]).toBeLessThan(over?.[i] ?? Number.NaN);
      expect(apart?.[i]).toBeLessThan(touching?.[i] ?? Number.NaN);
      expect(Math.max(over?.[i] ?? Number.NaN, touching?.[i] ?? Number.NaN)).toBeLessThan(amperes);
    }
  });

  test("the current printed for 10 mm² by method 102 in one quotation, 36 A, is the figure of method 101", () => {
    const at10 = (method: ReferenceMethod) => new Map(column("4D5", method, 2)).get(10);
    expect(at10("101")).toBe(36);
    const others = column("4D5", "102", 2).filter(([size]) => size !== 10);
    expect(Math.abs(power(others).at(10) - (at10("102") ?? Number.NaN))).toBeLessThan(1);
    expect(power(others).at(10) - 36).toBeGreaterThan(10);
  });
});

describe("voltage drop of the 70 °C tables", () => {
  const drops = (table: string) =>
    new Map((CAPACITY_TABLES.find(({ number }) => number === table)?.rows ?? []).map((row) => [row.size, row]));

  test("is the same up to 16 mm² in every table, since it is the same conductor as warm", () => {
    const read = drops("4D1");
    for (const table of ["4D2", "4D4", "4D5"]) {
      for (const [size, { drop }] of drops(table)) {
        if (size > 16) continue;
        const [single, three] = read.get(size)?.drop ?? [];
        expect(drop[0], `${table} ${size}`).toBe(single);
        if (drop[1] !== null) expect(drop[1], `${table} ${size}`).toBe(three);
      }
    }
  });

  test("figures that rest on that are marked as derived, larger ones as remembered", () => {
    for (const table of ["4D2", "4D4"]) {
      for (const [size, { dropSource }] of drops(table))
        expect(dropSource.basis).toBe(size > 16 ? "memory" : "derived");
    }
    for (const [size, { dropSource }] of drops("4D5"))
      expect(dropSource.basis).toBe(size < 2 ? "published" : "derived");
  });
});
