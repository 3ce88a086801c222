import { expect, test } from "vitest";
import { cell, gap, joined, particulars } from "./cell.ts";

test("of several cells what is known stays an answer beside what is not", () => {
  const inner = joined([cell("BS EN 61009"), gap("rating not recorded")]);
  expect(joined([inner, cell("30 mA")], "; ")).toEqual({
    words: "BS EN 61009, rating not recorded; 30 mA",
    open: true,
    parts: [cell("BS EN 61009"), cell(", "), gap("rating not recorded"), cell("; "), cell("30 mA")],
  });
});

test("cells that are all gaps are one gap, and cells that are all known one answer", () => {
  expect(joined([gap("a"), gap("b")])).toEqual({ words: "a, b", open: true });
  expect(joined([cell("a"), cell("b")])).toEqual({ words: "a, b", open: false });
});

test("particulars of which nothing is recorded say so once", () => {
  const all = [["standard", gap("not recorded")] as const, ["rating", gap("not recorded")] as const];
  expect(particulars(all)).toEqual(gap("not recorded"));
  expect(
    particulars([
      ["standard", cell("BS 88-2")],
      ["rating", gap("limited")],
    ]).words,
  ).toBe("BS 88-2, rating limited");
});
