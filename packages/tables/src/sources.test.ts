import type { Source } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { breakingCapacityOfLegacy } from "./devices/breaking-capacity.ts";
import * as tables from "./index.ts";
import { source } from "./sources.ts";

const BASES = ["published", "derived", "common-practice", "memory"];

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

/** Every source reachable from the exports of the package, with the way to it. */
function sourcesOf(value: unknown, way: string, found: Map<Source, string>, seen: Set<unknown>): void {
  if (!isRecord(value) || seen.has(value)) return;
  seen.add(value);
  if (typeof value.work === "string" && "basis" in value) found.set(value as unknown as Source, way);
  if (value instanceof Map) {
    for (const [key, one] of value) sourcesOf(one, `${way}[${String(key)}]`, found, seen);
    return;
  }
  for (const [key, one] of Object.entries(value)) sourcesOf(one, `${way}.${key}`, found, seen);
}

const found = new Map<Source, string>();
for (const [name, value] of Object.entries(tables)) sourcesOf(value, name, found, new Set());

/** Tables whose every row has to carry its own source. */
const TABLES: Readonly<Record<string, readonly unknown[]>> = {
  BREAKER_TYPES: tables.BREAKER_TYPES,
  ACCESS_REQUIREMENTS: tables.ACCESS_REQUIREMENTS,
  LAYERED_CABLES: tables.LAYERED_CABLES,
  RCD_ASKED: tables.RCD_ASKED,
  TYPES_FOR_LOADS: tables.TYPES_FOR_LOADS,
  INSTRUMENT_PARTS: tables.INSTRUMENT_PARTS,
  DECISION_RULES: tables.DECISION_RULES,
  probes: tables.ACCESS_LETTERS.map(tables.accessProbe),
  "first numerals": tables.OBJECT_NUMERALS.map(tables.objectProtection),
  "second numerals": tables.WATER_NUMERALS.map(tables.waterProtection),
  "arm's reach": tables.REACH_DIRECTIONS.map(tables.armsReach),
  polarity: tables.POLARITY_RULES.map(tables.polarityRule),
  ...Object.fromEntries([...tables.FUSES].map(([standard, rows]) => [standard, rows])),
};

describe("sources", () => {
  test("what the package gives away rests on many sources, each with work, edition and basis", () => {
    expect(found.size).toBeGreaterThan(40);
    for (const [{ work, edition, basis }, way] of found) {
      expect(work.trim().length, way).toBeGreaterThan(3);
      expect(edition.trim().length, way).toBeGreaterThan(2);
      expect(BASES, way).toContain(basis);
    }
  });

  test("what is derived says how", () => {
    for (const [{ basis, formula }, way] of found)
      if (basis === "derived") expect((formula ?? "").length, way).toBeGreaterThan(3);
  });

  test("sources cannot be changed", () => {
    for (const [one, way] of found) expect(Object.isFrozen(one), way).toBe(true);
    const leaf = breakingCapacityOfLegacy("BS 1361", "II");
    expect([Object.isFrozen(leaf), Object.isFrozen(leaf.detail)]).toEqual([true, true]);
  });

  test.each(Object.entries(TABLES))("%s: every row has a source", (_, rows) => {
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      const from = isRecord(row) ? row.source : undefined;
      expect(isRecord(from) && BASES.includes(String(from.basis)), JSON.stringify(row)).toBe(true);
    }
  });

  test("a source keeps its formula and its doubt, and has neither where none is given", () => {
    expect(source("a table", "2018", "derived", { formula: "a ÷ b", doubt: "b" })).toEqual({
      work: "a table",
      edition: "2018",
      basis: "derived",
      formula: "a ÷ b",
      doubt: "b",
    });
    expect(Object.keys(source("a table", "2018", "memory"))).toEqual(["work", "edition", "basis"]);
  });
});
