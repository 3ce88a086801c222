import { readFileSync } from "node:fs";
import { contentHash, type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import { standsInTheWay } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { assemble } from "./assemble.ts";
import { draftWhereOpen } from "./draft.ts";

const HOUSE = readFileSync(new URL("../../../examples/terraced-house.json", import.meta.url), "utf8");

type Editable = InspectionFile & { readonly inspected: { item: string; outcome: string }[] };

/** What the house is reported from with something changed, signed again where it is to be. */
function house(edit: (file: Editable) => void, sign: boolean) {
  const data = JSON.parse(HOUSE) as Editable;
  edit(data);
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const content = contentHash(parsed.file);
  const signatures = parsed.file.signatures.map((one) => (sign ? { ...one, content } : one));
  return draftWhereOpen(assemble({ ...parsed.file, signatures }));
}

/** The one item that nobody verified becomes a limitation. */
const settle = (file: Editable) => {
  for (const one of file.inspected) if (one.outcome === "not-verified") one.outcome = "limited";
};

describe("a report is a draft", () => {
  test("while something that decides stands open", () => {
    const input = house(() => undefined, true);
    expect(standsInTheWay(input.outcome)).toHaveLength(1);
    expect(input.draft).toBe(true);
  });

  test("while nobody signed this content", () => {
    expect(house(settle, false).draft).toBe(true);
  });

  test("and no longer once nothing stands open and somebody signed it", () => {
    const input = house(settle, true);
    expect(standsInTheWay(input.outcome)).toEqual([]);
    expect(input.draft).toBeUndefined();
  });
});

test("what stands in the way has a name each", () => {
  const { outcome } = house((file) => {
    for (const { circuits } of file.boards) for (const circuit of circuits) Object.assign(circuit, { rcd: undefined });
    for (const one of file.observations) one.choice = undefined;
  }, true);
  const names = standsInTheWay(outcome).map(({ name }) => name);
  expect(names.length).toBeGreaterThan(4);
  expect(new Set(names).size).toBe(names.length);
});
