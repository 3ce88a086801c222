import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COLUMNS, guess, type Use } from "./columns.ts";
import { planOf, type Target } from "./plan.ts";
import { sheetOf } from "./rows.ts";
import { readingIn } from "./value.ts";

const TARGETS: readonly Target[] = [
  { path: "boards/cu/circuits/c1", names: ["1", "sockets", "1 sockets"] },
  { path: "boards/cu/circuits/c2", names: ["2", "lights", "2 lights"] },
];

const use = (header: readonly string[]): readonly (Use | undefined)[] => header.map(guess);

describe("a cell", () => {
  test.each([
    ["0.35", "Ω", "0.35 Ω"],
    ["0,35", "Ω", "0.35 Ω"],
    [">999", "MΩ", ">999 MΩ"],
    ["999+", "MΩ", ">999 MΩ"],
    ["<0.05", "Ω", "<0.05 Ω"],
    ["1.234,5", "Ω", "1234.5 Ω"],
    ["1,234.5", "Ω", "1234.5 Ω"],
    ["350 mΩ", "Ω", "350 mΩ"],
    ["0.35 ohm", "MΩ", "0.35 Ω"],
  ])("%s in a column of %s is %s", (cell, unit, shown) => {
    expect(readingIn(cell, unit)).toEqual({ shown });
  });

  test("beyond the display is a reading only with its range", () => {
    expect(readingIn("OL", "MΩ")).toEqual({ because: "not-a-reading" });
    expect(readingIn("OL", "MΩ", "999")).toEqual({ shown: ">999 MΩ" });
  });

  test.each(["", "-", "n/a", "N/V"])("%s says nothing", (cell) => {
    expect(readingIn(cell, "Ω")).toEqual({ because: "empty" });
  });

  test.each(["pass", "1e308", "0.3.5", "12 bananas", "--1"])("%s is no reading", (cell) => {
    expect(readingIn(cell, "Ω")).toEqual({ because: "not-a-reading" });
  });
});

describe("a file", () => {
  test("with semicolons, decimal commas and a title line", () => {
    const sheet = sheetOf(
      "Test 4 Oct\nCircuit;R1+R2 (Ω);Ins L-E MΩ;Zs\n1;0,42;>999;0,61\nLights;1,10;200;1,32\n7;0,5;1;1\n",
    );
    if (sheet === undefined) throw new Error("refused");
    const plan = planOf(sheet, use(sheet.header), TARGETS);
    expect(plan.taken.map(({ path, shown }) => `${path.slice(7)} ${shown}`)).toEqual([
      "cu/circuits/c1/readings/r1r2 0.42 Ω",
      "cu/circuits/c1/readings/insulationLiveEarth >999 MΩ",
      "cu/circuits/c1/readings/zs 0.61 Ω",
      "cu/circuits/c2/readings/r1r2 1.10 Ω",
      "cu/circuits/c2/readings/insulationLiveEarth 200 MΩ",
      "cu/circuits/c2/readings/zs 1.32 Ω",
    ]);
    expect(plan.unplaced.filter(({ because }) => because === "no-circuit").map(({ cell }) => cell)).toEqual([
      "0,5",
      "1",
      "1",
    ]);
  });

  test("a circuit that stands twice is not taken until one is chosen", () => {
    const sheet = sheetOf("circuit,Zs\n1,0.61\n1,0.63\n");
    if (sheet === undefined) throw new Error("refused");
    const plan = planOf(sheet, use(sheet.header), TARGETS);
    expect(plan.taken).toEqual([]);
    expect(plan.twice).toHaveLength(1);
    expect(plan.twice[0]).toHaveLength(2);
  });

  test("too large, empty or broken is refused or empty, never half read", () => {
    expect(sheetOf("a,b\n".repeat(30_000))).toBeUndefined();
    expect(sheetOf("")?.rows).toEqual([]);
    expect(sheetOf('a,b\n"1,2')?.faults.length).toBeGreaterThan(0);
  });
});

describe("a file of any content", () => {
  test("loses no cell: each is taken, stands twice, or is listed with the reason", () => {
    const cell = fc.oneof(
      fc.constantFrom("1", "2", "sockets", "0.35", "0,35", ">999", "OL", "n/a", "", "x"),
      fc.string({ maxLength: 12, unit: "grapheme" }),
    );
    fc.assert(
      fc.property(
        fc.array(fc.array(cell, { minLength: 1, maxLength: 6 }), { maxLength: 12 }),
        fc.constantFrom(",", ";", "\t"),
        (table, separator) => {
          const text = [
            "circuit,Zs,r1,ins".replaceAll(",", separator),
            ...table.map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(separator)),
          ].join("\n");
          const sheet = sheetOf(text);
          if (sheet === undefined) return;
          const uses = use(sheet.header);
          const plan = planOf(sheet, uses, TARGETS);
          const readings = sheet.rows.flatMap(({ cells }) =>
            cells.filter(
              (one, i) =>
                one !== "" &&
                uses[i]?.column !== "circuit" &&
                uses[i]?.column !== "time" &&
                !(
                  uses[i] !== undefined &&
                  "because" in readingIn(one, COLUMNS[(uses[i] as Use).column].unit) &&
                  (readingIn(one, "Ω") as { because?: string }).because === "empty"
                ),
            ),
          );
          expect(plan.taken.length + plan.twice.flat().length + plan.unplaced.length).toBe(readings.length);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
