import { describe, expect, test } from "vitest";
import { forOthers } from "./for-others.ts";
import { parseInspectionData } from "./parse.ts";

const least = {
  format: "good-grounds-inspection",
  version: 3,
  id: "small",
  edition: "2018+A4",
  inspectedOn: "2026-10-20",
  brief: {
    client: { name: "Client" },
    premises: { address: ["1 Lane"] },
    use: "dwelling",
    tenure: "owner-occupied",
    nation: "england",
    purpose: "test",
    records: [],
  },
  visits: [{ date: "2026-10-20" }],
  people: [],
  instruments: [],
  extent: { covered: "all", sampling: [] },
  limitations: [],
  supply: { bonding: [] },
  boards: [{ id: "b", name: "Board", fedFrom: "supply", circuits: [] }],
  inspected: [],
  observations: [],
  photographs: [],
  signatures: [],
};

describe("notes to one's own figures", () => {
  const parsed = parseInspectionData({
    ...least,
    ownFigures: [{ check: "zs-sum", note: "Calculated: dog in the kitchen." }],
  });

  test("are kept in the file, and left out of what others get, with nothing else changed", () => {
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    expect(parsed.file.ownFigures).toEqual([{ check: "zs-sum", note: "Calculated: dog in the kitchen." }]);
    expect(forOthers(parsed.file)).toEqual(least);
  });

  test("a file without any is the same file", () => {
    const plain = parseInspectionData(least);
    if (!plain.ok) throw new Error(JSON.stringify(plain.issues));
    expect(forOthers(plain.file)).toBe(plain.file);
  });

  test.each([
    [{ check: "zs-sum" }],
    [{ check: "zs-sum", note: "" }],
    [{ check: "zs sum", note: "x" }],
    [{ check: "zs-sum", note: "x", by: "p" }],
  ])("%j is refused with its place", (note) => {
    const wrong = parseInspectionData({ ...least, ownFigures: [note] });
    expect(wrong.ok).toBe(false);
    if (!wrong.ok) expect(wrong.issues.every(({ path }) => path[0] === "ownFigures" && path[1] === 0)).toBe(true);
  });
});
