import { CLASSIFICATIONS, EDITIONS } from "@good-grounds/core";
import { expect, test } from "vitest";
import { CLASSIFICATION_MEANING, EDITION, editionsOn } from "./index.ts";

test("editions on a day: one, two in the overlap, the new one alone afterwards", () => {
  const on = (day: string) => editionsOn(day).map(({ id }) => id);
  expect(on("2026-04-14")).toEqual(["2018+A2+A3"]);
  expect(on("2026-04-15")).toEqual(["2018+A2+A3", "2018+A4"]);
  expect(on("2026-10-14")).toEqual(["2018+A2+A3", "2018+A4"]);
  expect(on("2026-10-15")).toEqual(["2018+A4"]);
  expect(on("2021-01-01")).toEqual([]);
});

test("an FI alone is unsatisfactory under the older edition only; C1 and C2 always are", () => {
  expect(EDITION["2018+A4"].unsatisfactory).toEqual(["C1", "C2"]);
  expect(EDITION["2018+A2+A3"].unsatisfactory).toEqual(["C1", "C2", "FI"]);
});

test("the form of the older edition named only C1 and C2, and that FI counts is marked as practice", () => {
  const older = EDITION["2018+A2+A3"];
  expect(older.unsatisfactoryByForm).toEqual(["C1", "C2"]);
  expect(older.outcomeSource.basis).toBe("common-practice");
  expect(older.furtherInvestigation).toContain("named only C1 and C2");
  expect(EDITION["2018+A4"].unsatisfactoryByForm).toEqual(["C1", "C2"]);
});

test("every edition stands under its own name, overlaps its neighbour and consists of dated amendments", () => {
  const days = EDITIONS.map((id) => {
    const { id: own, published, amendments, withdrawn, disconnectionScope } = EDITION[id];
    expect(own).toBe(id);
    expect(disconnectionScope).toEqual({ regulation: "411.3.2.2", asOf: "2018" });
    for (const one of amendments) expect(one.published >= published && one.published < (withdrawn ?? "9")).toBe(true);
    return amendments.map((one) => [one.name, one.published]);
  });
  expect(days).toEqual([
    [
      ["A2:2022", "2022-03-28"],
      ["A3:2024", "2024-07-31"],
    ],
    [["A4:2026", "2026-04-15"]],
  ]);
});

test("what rests on an unseen amendment says so", () => {
  const { source, outcomeSource, amendments } = EDITION["2018+A4"];
  for (const one of [source, outcomeSource, ...amendments.map((amendment) => amendment.source)])
    expect(one.doubt).toContain("not seen");
});

test("every classification has a meaning and a source", () => {
  expect(Object.keys(CLASSIFICATION_MEANING).sort()).toEqual([...CLASSIFICATIONS].sort());
  for (const { meaning } of Object.values(CLASSIFICATION_MEANING)) expect(meaning.length).toBeGreaterThan(10);
});
