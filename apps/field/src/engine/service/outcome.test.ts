import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Data } from "../protocol.ts";
import { outcomeOfData } from "./outcome.ts";

const HOUSE = readFileSync(new URL("../../../../../examples/terraced-house.json", import.meta.url), "utf8");

interface Editable {
  readonly observations: { choice?: unknown }[];
  readonly boards: { circuits: { readings: Record<string, unknown> }[] }[];
  readonly supply: { readings: Record<string, unknown> };
}

function house(edit: (data: Editable) => void): Data {
  const data = JSON.parse(HOUSE);
  edit(data);
  return data;
}

test("a job with nothing in it is not determined, and says that nothing was tested or looked at", () => {
  const { outcome, points } = outcomeOfData({});
  expect(outcome).toBe("not-determined");
  expect(points.map(({ words }) => words)).toEqual([
    "No test of any circuit is recorded.",
    "No item of the inspection is recorded as looked at.",
  ]);
});

test("each open point leads to the place of the record where it is answered", () => {
  const { points } = outcomeOfData(
    house(({ observations, boards, supply }) => {
      delete observations[0]?.choice;
      delete boards[0]?.circuits[1]?.readings.polarity;
      delete supply.readings.ze;
    }),
  );
  const paths = points.map(({ path }) => path);
  expect(paths).toContain("observations/o1");
  expect(paths).toContain("boards/cu/circuits/c2/readings");
  expect(paths).toContain("supply/readings");
});
