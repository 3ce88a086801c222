import { type Finding, matter, Reckoner, type Verdict } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { placesWorstFirst, worstFirst } from "./worst-first.ts";

const CHECKS = [
  { id: "maximum-zs", harm: 3 },
  { id: "cable-capacity", harm: 15 },
  { id: "voltage-drop", harm: 16 },
];

function found(check: string, verdict: Verdict, margin: number): Finding {
  const judgement = { ...new Reckoner(true).settled(matter("x", "x"), verdict, "x"), margin };
  return { check, path: [], judgement, beside: [], remarks: [] };
}

const names = (list: readonly Finding[]) => list.map(({ check }) => check);

describe("worst first", () => {
  test("danger comes before margin", () => {
    const list = [
      found("voltage-drop", "not-met", -0.9),
      found("cable-capacity", "not-met", -0.5),
      found("maximum-zs", "not-met", -0.01),
    ];
    expect(names(list.sort(worstFirst(CHECKS)))).toEqual(["maximum-zs", "cable-capacity", "voltage-drop"]);
  });

  test("the verdict comes before both, and among equals the smaller margin", () => {
    const list = [
      found("maximum-zs", "too-near", -0.9),
      found("voltage-drop", "not-met", Number.NaN),
      found("voltage-drop", "not-met", -0.1),
      found("voltage-drop", "not-met", Number.NEGATIVE_INFINITY),
    ].sort(worstFirst(CHECKS));
    expect(list.map(({ judgement }) => judgement.margin)).toEqual([Number.NEGATIVE_INFINITY, -0.1, Number.NaN, -0.9]);
  });

  test("what has no rank stands last among its equals", () => {
    const list = [found("of-nobody", "not-met", -0.9), found("voltage-drop", "not-met", -0.1)];
    expect(names(list.sort(worstFirst(CHECKS)))).toEqual(["voltage-drop", "of-nobody"]);
  });

  test("places stand by the worst of each, one without findings last", () => {
    const places = [
      { name: "none", findings: [] },
      { name: "drop", findings: [found("voltage-drop", "not-met", -0.9)] },
      { name: "loop", findings: [found("voltage-drop", "met", 0.1), found("maximum-zs", "not-met", -0.01)] },
    ];
    const sorted = placesWorstFirst(places, CHECKS);
    expect(sorted.map(({ name }) => name)).toEqual(["loop", "drop", "none"]);
    expect(names(sorted[0]?.findings ?? [])).toEqual(["maximum-zs", "voltage-drop"]);
  });
});
