import { readFileSync } from "node:fs";
import { MISFIT_KINDS } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { resolveInstallation } from "../installation/index.ts";
import { parseInspectionData } from "../parse.ts";

type Entry = Record<string, unknown>;
interface Document {
  readonly supply: Entry;
  readonly boards: (Entry & { readings: Entry; circuits: (Entry & { readings: Entry })[] })[];
}

const HOUSE = readFileSync(new URL("../../../../examples/terraced-house.json", import.meta.url), "utf8");

function parsed(edit: (document: Document) => void) {
  const document = JSON.parse(HOUSE) as Document;
  edit(document);
  return parseInspectionData(document);
}

describe("readings that do not agree, shared by choice", () => {
  test.each(MISFIT_KINDS)("%s may be named at the supply, a board and a circuit", (kind) => {
    const shared = [{ kind, note: "Looked at again." }];
    const result = parsed(({ supply, boards }) => {
      supply.sharedMisfits = shared;
      for (const board of boards) {
        board.sharedMisfits = shared;
        for (const circuit of board.circuits) circuit.sharedMisfits = shared;
      }
    });
    expect(result.ok && result.file.boards[0]?.circuits[0]?.sharedMisfits).toEqual(shared);
  });

  test("a kind that is not there is refused at its place", () => {
    const result = parsed(({ supply }) => {
      supply.sharedMisfits = [{ kind: "everything" }];
    });
    expect(result.ok ? [] : result.issues.map(({ path }) => path.join("/"))).toEqual(["supply/sharedMisfits/0/kind"]);
  });
});

describe("insulation of circuits together and between neutrals", () => {
  test("is resolved as readings of the board and of the circuit, and not known where left out", () => {
    const result = parsed(({ boards: [board] }) => {
      if (board === undefined) return;
      board.readings.insulationLiveEarth = { shown: "12 MΩ" };
      (board.circuits[0] as { readings: Entry }).readings.insulationBetweenNeutrals = { shown: ">999 MΩ" };
    });
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    const [board] = resolveInstallation(result.file).boards;
    expect(board?.insulationLiveEarth).toMatchObject({ kind: "measured", value: 12e6 });
    expect(board?.insulationLiveLive.kind).toBe("not-known");
    const [first, second] = board?.circuits ?? [];
    expect(first?.readings.insulationBetweenNeutrals).toMatchObject({ kind: "measured", value: 999e6 });
    expect(first?.readings.insulationBetweenNeutrals).toMatchObject({ detail: { bound: "above" } });
    expect(second?.readings.insulationBetweenNeutrals.kind).toBe("not-known");
  });
});
