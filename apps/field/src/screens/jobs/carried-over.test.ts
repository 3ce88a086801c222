import { readFileSync } from "node:fs";
import { type InspectionFile, parseInspection } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { carriedOver } from "./carried-over.ts";

const EXAMPLES = ["terraced-house", "workshop", "farmhouse"];

/** Members that belong to the day on which they were made, wherever they stand. */
const OF_THE_DAY = ["readings", "shown", "notTaken", "resistance", "connected", "heatDamage", "liveBeforeContinuity"];

/** What a new inspection may begin with. */
const MEMBERS = ["title", "brief", "supply", "boards", "things"];

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
    expect(Object.keys(carried).filter((member) => !MEMBERS.includes(member))).toEqual([]);
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

describe("what was looked at on the day", () => {
  const text = readFileSync(new URL("../../../../../examples/workshop.json", import.meta.url), "utf8");
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error("the example does not parse");

  test("a notice is looked for anew, the source and the main switch are as they were built", () => {
    const { supply, boards } = parsed.file;
    const carried = carriedOver({
      ...parsed.file,
      supply: { ...supply, otherSources: [{ id: "pv", kind: "photovoltaic", notice: true }] },
      boards: boards.map((board) => ({ ...board, mainSwitch: { fitted: true } })),
    });
    expect(carried.supply.otherSources).toEqual([{ id: "pv", kind: "photovoltaic" }]);
    expect(carried.boards[0]?.mainSwitch).toEqual({ fitted: true });
  });
});

describe("things of the inspection before", () => {
  const text = readFileSync(new URL("../../../../../examples/workshop.json", import.meta.url), "utf8");
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error("the example does not parse");

  test("are carried over as they were built, without their state and what was measured", () => {
    const things = {
      places: [{ id: "hall", special: ["none"], note: "n" }],
      enclosures: [{ id: "lid", firmness: "whole" }],
      sections: [{ id: "s", line: "2.5 mm²", layer: "sheathed" }],
      electrodes: [{ id: "rod", kind: "rod", resistance: { shown: "20 Ω" }, season: "dry", state: "sound" }],
      loads: [{ id: "oven", power: "3 kW" }],
      surgeDevices: [{ id: "spd", fitted: true, indicator: "in-order" }],
      arcDevices: [{ id: "arc", fitted: true, button: "trips", testability: "can-be-tested", indicator: "in-order" }],
    };
    const carried = carriedOver({ ...parsed.file, things: things as InspectionFile["things"] });
    expect(carried.things).toEqual({
      places: [{ id: "hall", special: ["none"] }],
      sections: [{ id: "s", line: "2.5 mm²" }],
      electrodes: [{ id: "rod", kind: "rod" }],
      loads: [{ id: "oven", power: "3 kW" }],
      surgeDevices: [{ id: "spd", fitted: true }],
      arcDevices: [{ id: "arc", fitted: true }],
    });
  });
});
