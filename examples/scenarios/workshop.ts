import { inspect } from "../simulate/inspect.ts";
import { inspectedItems, METER, THERMOMETER, withoutSurgeProtection } from "./common.ts";
import { DAYS } from "./workshop/days.ts";
import { BRIEF, EXTENT, LIMITATIONS, PEOPLE, VISITS } from "./workshop/job.ts";
import { OBSERVATIONS, PHOTOGRAPHS } from "./workshop/observations.ts";
import { SUPPLY } from "./workshop/supply.ts";
import { truth } from "./workshop/truth.ts";

/** A three-phase workshop with a shop. */
export function workshop(seed = truth.seed) {
  const { boards, origin } = inspect({ ...truth, seed });
  return {
    format: "good-grounds-inspection",
    version: 3,
    id: "GG-2026-0388",
    invented: true,
    title: "Workshop with a shop",
    edition: "2018+A2+A3",
    inspectedOn: DAYS[0],
    brief: BRIEF,
    visits: VISITS,
    people: PEOPLE,
    instruments: [METER, THERMOMETER],
    conditions: { conductorTemperature: { shown: "17 °C", with: "thermometer", by: "inspector" } },
    extent: EXTENT,
    limitations: LIMITATIONS,
    supply: { ...SUPPLY, readings: origin },
    boards,
    things: { surgeDevices: withoutSurgeProtection(boards) },
    inspected: inspectedItems(
      ["outdoor-equipment", "escape-route", "combustible-contents", "fire-alarm"],
      {
        "circuits.additional-protection": ["w1"],
        "circuits.terminations": ["w2"],
        "boards.devices": ["w3"],
        "circuits.cpc": ["w4"],
      },
      {
        "intake.meter": ["not-verified", "sealed"],
        "boards.surge": ["not-applicable", "none fitted; none asked for here"],
        "boards.arc-fault": ["not-applicable", "not asked for"],
        "circuits.barriers": ["limited", "ceiling void of the shop"],
      },
    ),
    observations: OBSERVATIONS,
    photographs: PHOTOGRAPHS,
    conclusion: {
      outcome: "unsatisfactory",
      generalCondition: "Well kept. Two matters need work soon.",
      nextInspection: { by: "2029-09-21", reason: "Machines, dust and vibration: three years." },
    },
    signatures: [
      { person: "inspector", capacity: "inspected-and-tested", at: "2026-09-24T17:00:00+01:00" },
      { person: "supervisor", capacity: "authorised-for-issue", at: "2026-09-25T09:20:00+01:00" },
    ],
  };
}
