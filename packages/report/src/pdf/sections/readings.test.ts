import { describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../../outside/reports/example.ts";
import { cell, gap } from "../cell.ts";
import { Drawings } from "../drawings.ts";
import { boards } from "./boards.ts";
import { inUnit } from "./readings.ts";

type Reading = { shown: string; method?: string; note?: string; by?: string; with?: string; at?: string };
type Written = { circuits: { designation: string; readings: Record<string, Reading> }[] };

const boardOf = (edit: (board: Written) => void = () => undefined) =>
  boards(inputOf(changed((file) => edit((file.boards as Written[])[0] as Written))), new Drawings()).boards[0];

describe("the unit in the heading", () => {
  test.each([
    ["0.42 Ω", "Ω", "0.42"],
    [">999 MΩ", "MΩ", ">999"],
    ["420 mΩ", "Ω", "420 mΩ"],
    ["2 GΩ", "MΩ", "2 GΩ"],
    ["500 V", "V", "500"],
    ["–", "Ω", "–"],
    ["correct", "", "correct"],
  ])("leaves %j under %j as %j", (words, unit, left) => {
    expect(inUnit(cell(words), unit)).toEqual(cell(left));
  });

  test("leaves a gap alone", () => {
    expect(inUnit(gap("limited to 3 Ω"), "Ω")).toEqual(gap("limited to 3 Ω"));
  });

  test("has a column for every figure of a row", () => {
    const section = boards(inputOf(EXAMPLE), new Drawings());
    for (const row of section.boards[0]?.readings ?? []) expect(row.length).toBe(section["readings-head"].length);
  });
});

describe("how readings were taken", () => {
  test("stands once, with the circuits; of all circuits in a word", () => {
    const board = boardOf(({ circuits }) => {
      for (const { readings } of circuits) if (readings.zs !== undefined) readings.zs.method = "two leads, low current";
      const [first, second] = circuits;
      for (const one of [first, second]) if (one?.readings.r1r2 !== undefined) one.readings.r1r2.note = "plates off";
    });
    expect(board?.methods).toEqual([
      "Plates off: R1+R2 of circuits 1, 2.",
      "Two leads, low current: Zs of every circuit.",
    ]);
  });

  test("names who read them, with what and from when to when", () => {
    expect(boardOf()?.taken).toEqual({
      words:
        "Read by J. Sample (invented) with multifunction installation tester INV-0417, 6 October 2026, 09:37 to 11:01.",
      open: false,
    });
  });

  test("counts what is not recorded", () => {
    const some = boardOf(({ circuits }) => {
      delete circuits[0]?.readings.zs?.by;
    });
    expect(some?.taken.parts?.at(-1)?.words).toMatch(/^Of \d+ readings 1 without a name\.$/);
    const none = boardOf((board) => {
      const strip = (part: unknown): void => {
        if (typeof part !== "object" || part === null) return;
        if ("shown" in part) for (const name of ["by", "with", "at"]) Reflect.deleteProperty(part, name);
        else Object.values(part).forEach(strip);
      };
      strip(board);
    });
    expect(none?.taken).toEqual(gap("Who read these, with what and when is not recorded."));
  });
});

test("a circuit's number that is a name is cut in the tables and stands whole below", () => {
  const name = "first floor landing and stairs";
  const board = boardOf(({ circuits }) => {
    Object.assign(circuits[0] ?? {}, { designation: name });
  });
  expect(board?.protection[0]?.no.words).toBe("first floor l…");
  expect(board?.readings[0]?.[0]?.words).toBe("first floor l…");
  expect(board?.notes).toContain(`Circuit first floor l… in full: ${name}.`);
});
