import type { Verdict } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { EXAMPLE, inputOf } from "../../../../../outside/reports/example.ts";
import { Drawings } from "../drawings.ts";
import { boards } from "./boards.ts";
import { calculations, findings } from "./findings.ts";
import { fromMemory, workings } from "./workings.ts";

const input = inputOf(EXAMPLE);
const all = [...input.weighing.supply, ...input.weighing.boards.flat(), ...input.weighing.circuits.flat()];
const count = (verdict: Verdict) => all.filter(({ judgement }) => judgement.verdict === verdict).length;

describe("findings with their grounds", () => {
  const section = findings(input, new Drawings());
  const listed = section.places.flatMap((place) => place.findings);

  test("every finding that is not met, too near to call or not known is written out, and no other", () => {
    expect(listed.length).toBe(count("not-met") + count("too-near") + count("not-known"));
    expect(new Set(listed.map(({ verdict }) => verdict))).toEqual(
      new Set(["not met", "too near to call", "not known"]),
    );
  });

  test("places with something not met stand before those where all is too near or not known", () => {
    const worst = section.places.map(({ findings: list }) => list[0]?.verdict);
    const order = ["not met", "too near to call", "not known"];
    const ranks = worst.map((verdict) => order.indexOf(verdict ?? ""));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  });

  test("say nothing of memory: what is not certain is for the inspector, and stands in the workings", () => {
    expect(JSON.stringify(section)).not.toContain("memory");
    const working = workings(input).places.flatMap((place) => place.findings);
    const named = working.filter(({ memory }) => memory !== "");
    expect(named.length).toBeGreaterThan(0);
    for (const { verdict, memory } of named) {
      expect(verdict).not.toBe("not known");
      expect(memory).toMatch(/from memory, to be checked against the standard: .+\(BS .+\)/);
    }
    expect(fromMemory(input).length).toBeGreaterThan(0);
  });

  test("have every calculation that arises in the workings, each with its whole argument", () => {
    const working = workings(input).places.flatMap((place) => place.findings);
    expect(working.length).toBe(all.length - count("not-applicable"));
    for (const { argument } of working) expect(argument.length).toBeGreaterThan(0);
  });
});

describe("every calculation", () => {
  test("is counted once under its verdict", () => {
    const { rows } = calculations(input);
    const sum = (column: number) =>
      rows.reduce((total, row) => total + (Number.parseInt(row[column] ?? "", 10) || 0), 0);
    expect([2, 3, 4, 5, 6].map(sum)).toEqual([
      count("not-met"),
      count("too-near"),
      count("not-known"),
      count("met"),
      count("not-applicable"),
    ]);
  });
});

describe("boards", () => {
  const [board] = boards(input, new Drawings()).boards;

  test("give every circuit a row of protection and a row of readings", () => {
    expect(board?.protection.length).toBe(9);
    expect(board?.readings.length).toBe(9);
  });

  test("show a reading as the instrument showed it and a missing one as a gap with its reason", () => {
    const alarms = board?.readings[7];
    expect(alarms?.filter(({ open }) => open).map(({ words }) => words)).toEqual(["limited", "limited"]);
    expect(board?.reasons).toEqual([
      "Alarms cannot be disconnected without damage: circuit 8 insulation live to live; circuit 8 insulation live to earth.",
    ]);
    expect(board?.readings[1]?.map(({ words }) => words)).toContain(">999");
  });
});
