import type { Misfit } from "@good-grounds/core";
import { assumed, TERM } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../outside/reports/example.ts";
import { reportModel } from "../pdf/model.ts";
import { misfitLines } from "./misfits.ts";
import { renderWeighing } from "./weighing.ts";

const path = ["boards", 0, "circuits", 5];
const at = [...path, "readings", "r1r2"];

function misfit(change: Partial<Misfit> = {}): Misfit {
  return {
    kind: "circuit-readings",
    path,
    title: "Circuit 6: readings that do not agree",
    odds: 5,
    clear: true,
    readings: [
      { path: at, name: "R1+R2", unit: "ohm", shown: "1.01 Ω", measured: 1.01, value: 0.79, low: 0.71, high: 0.86 },
    ],
    explanations: [
      {
        id: "length-wrong",
        words: "the cable is longer",
        share: 0.5,
        innocent: true,
        would: [{ path: at, value: 1, low: 0.9, high: 1.1 }],
      },
      { id: "joint-in-line", words: "a joint", share: 0.3, innocent: false, would: [] },
      { id: "zs-not-of-this-circuit", words: "another Zs", share: 0.02, innocent: true, would: [] },
    ],
    toldApart: false,
    next: { id: "r1rn", words: "read R1+Rn", expects: [{ explanation: "length-wrong", words: "about 1.6 Ω" }] },
    innocentCauses: ["leads not nulled"],
    formula: "Zs = Zdb + (R1+R2)",
    grounds: [assumed(TERM.conductorTolerance, 1, "taken as written")],
    ...change,
  };
}

const text = (list: readonly Misfit[], all = false) => misfitLines(list, 200, all).join("\n");

describe("readings that do not agree, in a terminal", () => {
  test("nothing is said where nothing is clear, unless all is asked for", () => {
    expect(text([])).toBe("");
    expect(text([misfit({ clear: false })])).toBe("");
    expect(text([misfit({ clear: false })], true)).toContain("(less clear)");
    expect(text([misfit(), misfit({ clear: false })])).toContain("One more is less clear");
  });

  test("the leading explanation, what cannot be told from it, and what to read next", () => {
    const said = text([misfit()]);
    expect(said).toContain("R1+R2 1.01 Ω: by the cable and the other readings 0.710 Ω to 0.860 Ω");
    expect(said).toContain(
      "Most likely (50 %): the cable is longer; then R1+R2 about 1.00 Ω; no fault of the installation",
    );
    expect(said).toContain("Cannot be told apart (30 %): a joint");
    expect(said).toContain("Next: read R1+Rn; about 1.6 Ω if length wrong");
    expect(said).not.toContain("another Zs");
    expect(text([misfit()], true)).toContain("Or (2 %): another Zs");
    expect(text([misfit({ toldApart: true })])).not.toContain("Cannot be told apart");
  });
});

describe("what goes to others", () => {
  const input = (json: string, misfits: readonly Misfit[]) => ({ ...inputOf(json), misfits });
  const list = (json: string, misfits: readonly Misfit[]) =>
    (reportModel(input(json, misfits)).data.misfits as { list: { title: string; lines: string[] }[] }).list;
  const shared = (kind: string) =>
    changed((file) => {
      const [board] = file.boards as { circuits: Record<string, unknown>[] }[];
      const circuit = board?.circuits[5];
      if (circuit !== undefined) circuit.sharedMisfits = [{ kind, note: "Looked at again." }];
    });

  test("by default no page and no working shows any", () => {
    expect(list(EXAMPLE, [misfit()])).toEqual([]);
    const workings = renderWeighing(input(EXAMPLE, [misfit()]), { all: true, grounds: true, misfits: false });
    expect(workings).not.toContain("Readings that do not agree");
    expect(renderWeighing(input(EXAMPLE, [misfit()]))).toContain("Readings that do not agree");
  });

  test("what the inspector chose is shown with the note, and nothing of another kind or place", () => {
    const other = misfit({ path: ["boards", 0, "circuits", 4], title: "another circuit" });
    const [one, ...more] = list(shared("circuit-readings"), [other, misfit()]);
    expect(more).toEqual([]);
    expect(one?.title).toBe("Circuit 6: readings that do not agree");
    expect(one?.lines).toContain("Inspector's note: Looked at again.");
    expect(one?.lines.join(" ")).toContain("Assumed: taken as written");
  });

  test("what was chosen and is no longer there is said to agree now", () => {
    const [one] = list(shared("insulation"), [misfit()]);
    expect(one?.lines[0]).toBe("Named to be shown here, but the readings now agree.");
  });
});
