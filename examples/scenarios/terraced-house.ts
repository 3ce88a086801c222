import { inspect } from "../simulate/inspect.ts";
import { inspectedItems, METER, THERMOMETER, withoutSurgeProtection } from "./common.ts";
import { DAY } from "./terraced-house/days.ts";
import { BRIEF, EXTENT, LIMITATIONS, PEOPLE, VISITS } from "./terraced-house/job.ts";
import { OBSERVATIONS, PHOTOGRAPHS } from "./terraced-house/observations.ts";
import { SUPPLY } from "./terraced-house/supply.ts";
import { truth } from "./terraced-house/truth.ts";

/** A let terraced house on TN-C-S with one board. */
export function terracedHouse(seed = truth.seed) {
  const { boards, origin } = inspect({ ...truth, seed });
  return {
    format: "good-grounds-inspection",
    version: 3,
    id: "GG-2026-0417",
    invented: true,
    title: "Let terraced house",
    edition: "2018+A4",
    inspectedOn: DAY,
    brief: BRIEF,
    visits: VISITS,
    people: PEOPLE,
    instruments: [METER, THERMOMETER],
    conditions: { conductorTemperature: { shown: "14 °C", with: "thermometer", by: "inspector" } },
    extent: EXTENT,
    limitations: LIMITATIONS,
    supply: { ...SUPPLY, readings: origin },
    boards,
    things: { surgeDevices: withoutSurgeProtection(boards) },
    inspected: inspectedItems(
      ["dwelling", "bath-or-shower", "outdoor-equipment", "buried-cable", "outbuilding", "fire-alarm"],
      {
        "boards.non-combustible": ["o4"],
        "earthing.main-bonding": ["o2"],
        "circuits.capacity": ["o1"],
        "circuits.additional-protection": ["o3"],
        "circuits.terminations": ["o5"],
        "accessories.condition": ["o6"],
        "outdoors.weather": ["o7"],
      },
      {
        "intake.meter": ["not-verified", "sealed by the distributor"],
        "intake.isolator": ["not-applicable", "none fitted"],
        "circuits.concealed": ["limited", "concealed cables not exposed"],
        "circuits.barriers": ["limited", "concealed"],
        "boards.surge": ["not-applicable", "none fitted; none asked for in this house"],
        "boards.arc-fault": ["not-applicable", "not asked for in this house"],
      },
    ),
    observations: OBSERVATIONS,
    photographs: PHOTOGRAPHS,
    conclusion: {
      outcome: "unsatisfactory",
      generalCondition:
        "A sound board with RCDs on most circuits. A loose joint, a damp outdoor termination and an unseen shower cable keep the house from being satisfactory; the broken socket was made safe on the day.",
      nextInspection: {
        by: "2031-10-05",
        reason: "Let house in fair condition: five years, once the matters above are put right.",
      },
    },
    signatures: [
      { person: "inspector", capacity: "inspected-and-tested", at: "2026-10-06T18:40:00+01:00" },
      { person: "supervisor", capacity: "authorised-for-issue", at: "2026-10-07T08:15:00+01:00" },
    ],
  };
}
