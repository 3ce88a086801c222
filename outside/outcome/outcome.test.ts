import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { careOf, soundJob } from "../alarms/job.ts";
import { randomInstallation, writtenFile } from "../diagnosis/random-installation.ts";
import { fileOf, soundHouse } from "../diagnosis/written-house.ts";
import { answeredInFull } from "./answer-in-full.ts";
import { complete, outcomeOfData } from "./complete.ts";
import { faulty, KINDS_OF_FAULT } from "./planted-faults.ts";

const SOUND = 150;
const FAULTY = 480;

const soundOf = (n: number) => randomInstallation(4000 + n, new Chance(4000 + n));

describe("simulated inspections, tested and answered in full", () => {
  test(`${SOUND} sound ones are satisfactory`, () => {
    const open = Array.from({ length: SOUND }, (_, n) => outcomeOfData(complete(writtenFile(soundOf(n))))).flatMap(
      ({ outcome, points }, n) => (outcome === "satisfactory" ? [] : [[n, points]]),
    );
    expect(open).toEqual([]);
  });

  test(`${SOUND} sound ones of another hand, at four levels of care, are satisfactory once all is answered`, () => {
    const open = Array.from({ length: SOUND }, (_, n) => {
      const { outcome, points } = outcomeOfData(answeredInFull(soundJob(`answered/${n}`, careOf((n % 4) + 1)).file));
      return outcome === "satisfactory" ? [] : [[n, points]];
    });
    expect(open.flat()).toEqual([]);
  });

  test(`${FAULTY} with a fault of which nothing that says anything speaks are none of them satisfactory`, () => {
    expect(FAULTY).toBeGreaterThan(15 * KINDS_OF_FAULT);
    const passed = Array.from({ length: FAULTY }, (_, n) => faulty(soundOf(n), n)).flatMap(({ name, data }, n) => {
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
