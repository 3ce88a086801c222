import { readFileSync } from "node:fs";
import { type InspectionFile, parseInspection } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { carriedOver } from "./carried-over.ts";

const EXAMPLES = ["terraced-house", "workshop", "farmhouse"];

/** Members that belong to the day on which they were made, wherever they stand. */
const OF_THE_DAY = ["readings", "shown", "notTaken", "resistance", "connected", "heatDamage", "liveBeforeContinuity"];

function membersOf(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  const own = Array.isArray(value) ? [] : Object.keys(value);
  return [...own, ...Object.values(value).flatMap(membersOf)];
}

describe.each(EXAMPLES)("a new inspection from the file of %s", (name) => {
  const text = readFileSync(new URL(`../../../../../examples/${name}.json`, import.meta.url), "utf8");
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error("the example does not parse");
  const { file } = parsed;
  const carried = carriedOver(file);

  test("has nothing that was measured, found or judged", () => {
    expect(membersOf(file).some((member) => OF_THE_DAY.includes(member))).toBe(true);
    expect(membersOf(carried).filter((member) => OF_THE_DAY.includes(member))).toEqual([]);
    expect(Object.keys(carried).filter((member) => !["title", "brief", "supply", "boards"].includes(member))).toEqual(
      [],
    );
  });

  test("has every board and circuit with its device and cable", () => {
    const built = ({ boards }: Pick<InspectionFile, "boards">) =>
      boards.map(({ id, circuits }) => [
        id,
        circuits.map(({ id, device, cable, load }) => ({ id, device, cable, load })),
      ]);
    expect(built(carried)).toEqual(built(file));
  });

  test("knows of the inspection before it, and asks its purpose anew", () => {
    expect(carried.brief.lastInspection).toBe(file.inspectedOn);
    expect(carried.brief.records).toEqual([{ kind: "condition report", date: file.inspectedOn, reference: file.id }]);
    expect("purpose" in carried.brief).toBe(false);
  });
});
