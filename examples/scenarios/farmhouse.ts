import { inspect } from "../simulate/inspect.ts";
import { inspectedItems, METER, THERMOMETER, withoutSurgeProtection } from "./common.ts";
import { DAYS } from "./farmhouse/days.ts";
import { BRIEF, EXTENT, LIMITATIONS, PEOPLE, VISITS } from "./farmhouse/job.ts";
import { OBSERVATIONS, PHOTOGRAPHS } from "./farmhouse/observations.ts";
import { SUPPLY } from "./farmhouse/supply.ts";
import { THINGS } from "./farmhouse/things.ts";
import { truth } from "./farmhouse/truth.ts";

/** A farmhouse with outbuildings on its own electrode. */
export function farmhouse(seed = truth.seed) {
  const { boards, origin } = inspect({ ...truth, seed });
  return {
    format: "good-grounds-inspection",
    version: 3,
    id: "GG-2026-0431",
    invented: true,
    title: "Farmhouse with outbuildings",
    edition: "2018+A4",
    inspectedOn: DAYS[0],
    brief: BRIEF,
    visits: VISITS,
    people: PEOPLE,
    instruments: [METER, THERMOMETER],
    conditions: { conductorTemperature: { shown: "8 °C", with: "thermometer", by: "inspector" } },
    extent: EXTENT,
    limitations: LIMITATIONS,
    supply: { ...SUPPLY, readings: origin },
    boards,
    things: { ...THINGS, surgeDevices: withoutSurgeProtection(boards) },
    inspected: inspectedItems(
      [
        "dwelling",
        "earth-electrode",
        "bath-or-shower",
        "outdoor-equipment",
        "buried-cable",
        "outbuilding",
        "combustible-contents",
        "combustible-construction",
        "farm",
        "fire-alarm",
      ],
      {
        "earthing.main-bonding": ["f1"],
        "outdoors.outbuildings": ["f2"],
        "circuits.capacity": ["f3"],
        "circuits.additional-protection": ["f4"],
      },
      {
        "intake.meter": ["not-verified", "sealed"],
        "boards.surge": ["not-applicable", "none fitted; none asked for here"],
        "boards.arc-fault": ["not-applicable", "not asked for"],
        "bathrooms.bonding": ["in-order", "conditions to leave it out met"],
      },
    ),
    observations: OBSERVATIONS,
    photographs: PHOTOGRAPHS,
    conclusion: { nextInspection: { by: "2029-11-09", reason: "Farm with livestock and damp: three years." } },
    signatures: [{ person: "inspector", capacity: "inspected-and-tested", at: "2026-11-11T17:30:00+00:00" }],
  };
}
