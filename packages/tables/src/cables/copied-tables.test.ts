import {
  CABLE_KINDS,
  type CableKind,
  INSULATIONS,
  type Insulation,
  isKnown,
  REFERENCE_METHODS,
  type ReferenceMethod,
} from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { CAPACITY_TABLES, tabulatedCapacity, tabulatedDrop } from "./index.ts";

/**
 * The tables as copied out, apart from the rows under test. Columns are method and loaded conductors; A by size in mm²,
 * "m" where the cell is from memory; after the bar mV/A/m single-phase and three-phase.
 */
const COPIED: readonly {
  readonly table: string;
  readonly kind: CableKind;
  readonly insulation: Insulation;
  readonly columns: string;
  readonly rows: string;
}[] = [
  {
    table: "4D5",
    kind: "flat-twin-and-cpc",
    insulation: "70C-thermoplastic",
    columns: "100/2 101/2 102/2 103/2 C/2 A/2",
    rows: `
     1     13   10.5     13      8     16   11.5 | 44
   1.5     16     13     16     10     20   14.5 | 29
   2.5    21m    17m    21m  13.5m     27     20 | 18
     4    27m    22m    27m   17.5     37    26m | 11
     6    34m    27m    35m  23.5m    47m    32m | 7.3
    10     45    36m    47m     32    64m    44m | 4.4
    16    57m    46m    63m  42.5m    85m    57m | 2.8
`,
  },
  {
    table: "4D1",
    kind: "singles",
    insulation: "70C-thermoplastic",
    columns: "A/2 A/3 B/2 B/3 C/2 C/3",
    rows: `
     1     11   10.5   13.5     12   15.5     14 | 44 38
   1.5   14.5   13.5   17.5   15.5     20     18 | 29 25
   2.5     20     18     24     21     27     25 | 18 15
     4     26     24     32     28     37     33 | 11 9.5
     6     34     31     41     36     47     43 | 7.3 6.4
    10     46     42     57     50     65     59 | 4.4 3.8
    16     61     56     76     68     87     79 | 2.8 2.4
    25     80     73    101     89    114    104 | 1.8 1.55
    35     99     89    125    110    141    129 | 1.3 1.1
`,
  },
  {
    table: "4D2",
    kind: "multicore",
    insulation: "70C-thermoplastic",
    columns: "A/2 A/3 B/2 B/3 C/2 C/3 E/2 E/3",
    rows: `
     1    11m    10m    13m  11.5m    15m  13.5m    17m  14.5m | 44 38
   1.5    14m    13m  16.5m     15  19.5m   17.5    22m  18.5m | 29 25
   2.5   18.5  17.5m     23     20    27m     24    30m    25m | 18 15
     4    25m    23m    30m     27    36m     32    40m    34m | 11 9.5
     6     32    29m     38     34     46     41    51m    43m | 7.3 6.4
    10     43    39m     52     46     63     57    70m    60m | 4.4 3.8
    16     57    52m     69     62     85     76    94m    80m | 2.8 2.4
    25    75m    68m    90m     80   112m     96   119m   101m | 1.75 1.5
    35    92m    83m   111m     99   138m    119   148m   126m | 1.25 1.1
`,
  },
  {
    table: "4D4",
    kind: "armoured",
    insulation: "70C-thermoplastic",
    columns: "C/2 C/3 E/2 E/3 D/2 D/3",
    rows: `
   1.5    21m    18m    22m    19m    22m    18m | 29 25
   2.5    28m    25m    31m    26m    29m    24m | 18 15
     4    38m    33m    41m    35m    37m    30m | 11 9.5
     6    49m    42m    53m    45m    46m    38m | 7.3 6.4
    10    67m    58m    72m     62    60m    50m | 4.4 3.8
    16    89m    77m    97m    83m    78m    64m | 2.8 2.4
    25   118m   102m   128m   110m    99m    82m | 1.75 1.5
    35   145m   125m   157m   135m   119m    98m | 1.25 1.1
`,
  },
  {
    table: "4E4",
    kind: "armoured",
    insulation: "90C-thermosetting",
    columns: "C/2 C/3 E/2 E/3 D/2 D/3",
    rows: `
   1.5     27     23     29     25     25     21 | 31 27
   2.5     36     31     39     33     33     28 | 19 16
     4     49     42     52     44     43     36 | 12 10
     6     62     53     66     56     53     44 | 7.9 6.8
    10     85     73     90     78     71     58 | 4.7 4
    16    110     94    115     99     91     75 | 2.9 2.5
    25    146    124    152    131    116     96 | 1.9 1.65
    35    180    154    188    162    139    115 | 1.35 1.15
`,
  },
];

interface Cell {
  readonly method: ReferenceMethod;
  readonly loaded: 2 | 3;
  readonly area: number;
  readonly amperes: number;
  readonly remembered: boolean;
}

const isMethod = (word: string): word is ReferenceMethod => (REFERENCE_METHODS as readonly string[]).includes(word);

function cellsOf(
  columns: string,
  rows: string,
): { cells: readonly Cell[]; drops: ReadonlyMap<number, readonly number[]> } {
  const cells: Cell[] = [];
  const drops = new Map<number, readonly number[]>();
  for (const line of rows.trim().split("\n")) {
    const [left = "", right = ""] = line.split("|");
    const [size, ...figures] = left.trim().split(/ +/);
    const area = Number(size);
    drops.set(area, right.trim().split(" ").map(Number));
    for (const [i, column] of columns.split(" ").entries()) {
      const [method = "", loaded] = column.split("/");
      const figure = figures[i] ?? "";
      if (!isMethod(method)) throw new Error(`no such method: ${method}`);
      cells.push({
        method,
        loaded: loaded === "3" ? 3 : 2,
        area,
        amperes: Number.parseFloat(figure),
        remembered: figure.endsWith("m"),
      });
    }
  }
  return { cells, drops };
}

describe.each(COPIED)("Table $table", ({ table, kind, insulation, columns, rows }) => {
  const { cells, drops } = cellsOf(columns, rows);
  const cable = { kind, insulation, material: "copper" } as const;

  test("every cell is the copied one, with its own basis", () => {
    for (const { method, loaded, area, amperes, remembered } of cells) {
      const found = tabulatedCapacity({ ...cable, method, area, loadedConductors: loaded });
      const where = `${method}, ${loaded} loaded, ${area} mm²`;
      expect(found.value, where).toBe(amperes);
      if (found.kind !== "published") throw new Error(`not published: ${where}`);
      expect(found.detail.source.basis, where).toBe(remembered ? "memory" : "published");
      expect(found.detail.source.work, where).toContain(table);
    }
  });

  test("there is nothing beyond what was copied", () => {
    const carried = CAPACITY_TABLES.find(({ number }) => number === table)?.rows ?? [];
    expect(carried.flatMap(({ capacities }) => capacities)).toHaveLength(cells.length);
    expect(carried.map(({ size }) => size)).toEqual([...drops.keys()]);
  });

  test("voltage drop is the copied one to the last bit, in V/A/m", () => {
    for (const [area, millivolts] of drops) {
      for (const [i, loadedConductors] of ([2, 3] as const).entries()) {
        const printed = millivolts[i];
        const found = tabulatedDrop({ ...cable, area, loadedConductors });
        if (printed === undefined) expect(isKnown(found), `${area} mm²`).toBe(false);
        else expect(found.value, `${area} mm²`).toBe(Number(`${printed}e-3`));
      }
    }
  });
});

test("kinds and insulations without a table have no figure anywhere", () => {
  const carried = new Set(COPIED.map(({ kind, insulation }) => `${kind} ${insulation}`));
  for (const kind of CABLE_KINDS) {
    for (const insulation of INSULATIONS) {
      if (carried.has(`${kind} ${insulation}`)) continue;
      const cable = { kind, insulation, material: "copper", area: 2.5, loadedConductors: 2 } as const;
      expect(isKnown(tabulatedDrop(cable))).toBe(false);
      for (const method of REFERENCE_METHODS) expect(isKnown(tabulatedCapacity({ ...cable, method }))).toBe(false);
    }
  }
});
