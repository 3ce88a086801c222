import { readFileSync } from "node:fs";
import { assemble } from "@good-grounds/assembly";
import { describe, expect, test } from "vitest";
import { readInspection } from "./inspection.ts";
import { weighingJson } from "./json.ts";

interface Output {
  readonly misfits: readonly {
    readonly kind: string;
    readonly place: string;
    readonly readings: readonly { readonly place: string; readonly measured: number }[];
    readonly explanations: readonly { readonly share: number }[];
    readonly grounds?: readonly { readonly kind: string }[];
  }[];
}

function misfitsOf(name: string, grounds: boolean): Output["misfits"] {
  const parsed = readInspection(readFileSync(new URL(`../../../examples/${name}.json`, import.meta.url), "utf8"));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const text = JSON.stringify(weighingJson(assemble(parsed.file), grounds));
  return (JSON.parse(text) as Output).misfits;
}

describe("readings that do not agree, as JSON", () => {
  test("the loose joint of the terraced house is there, with place, readings and shares", () => {
    const found = misfitsOf("terraced-house", false).find(({ place }) => place === "/boards/0/circuits/5");
    expect(found?.kind).toBe("circuit-readings");
    expect(found?.readings[0]).toMatchObject({ place: "/boards/0/circuits/5/readings/r1r2", measured: 1.6 });
    expect(found?.explanations[0]?.share).toBeGreaterThan(0.3);
    expect(found).not.toHaveProperty("grounds");
  });

  test("a ring has its explanations and how many cannot be told apart, and no drawing", () => {
    const found = misfitsOf("terraced-house", false).find(({ kind }) => kind === "ring");
    expect(found).toMatchObject({ place: "/boards/0/circuits/1", clear: false, tied: 2, toldApart: false });
    expect(found).toMatchObject({ explanations: [{ id: "spur-at-socket-5", innocent: true }, { innocent: false }] });
    expect(found).not.toHaveProperty("ring");
  });

  test("with grounds, the leaves read and assumed", () => {
    const kinds = new Set(
      misfitsOf("terraced-house", true).flatMap(({ grounds = [] }) => grounds.map(({ kind }) => kind)),
    );
    expect(kinds).toContain("measured");
    expect(kinds).toContain("assumed");
  });
});
