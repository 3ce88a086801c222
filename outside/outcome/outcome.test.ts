import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { randomInstallation, writtenFile } from "../diagnosis/random-installation.ts";
import { fileOf, soundHouse } from "../diagnosis/written-house.ts";
import { complete, outcomeOfData } from "./complete.ts";
import { faulty } from "./planted-faults.ts";

const JOBS = 66;

const soundOf = (n: number) => randomInstallation(4000 + n, new Chance(4000 + n));

describe("simulated inspections, tested and answered in full", () => {
  test(`${JOBS} sound ones are satisfactory`, () => {
    const open = Array.from({ length: JOBS }, (_, n) => outcomeOfData(complete(writtenFile(soundOf(n))))).flatMap(
      ({ outcome, points }, n) => (outcome === "satisfactory" ? [] : [[n, points]]),
    );
    expect(open).toEqual([]);
  });

  test(`${JOBS} with a fault of which no observation speaks are none of them satisfactory`, () => {
    const passed = Array.from({ length: JOBS }, (_, n) => faulty(soundOf(n), n)).flatMap(({ name, data }, n) => {
      const { outcome, points } = outcomeOfData(data);
      return outcome === "satisfactory" || points.length === 0 ? [`${n}: ${name}`] : [];
    });
    expect(passed).toEqual([]);
  });

  test("a house written by hand is satisfactory with the polarity of its supply, and not determined without", () => {
    const house = soundHouse();
    expect(outcomeOfData(complete(fileOf({ ...house, polarity: "correct" }))).points).toEqual([]);
    expect(outcomeOfData(complete(fileOf(house))).points).toEqual([
      { kind: "not-tested", tests: ["supply-polarity"], places: [["supply"]] },
    ]);
  });
});
