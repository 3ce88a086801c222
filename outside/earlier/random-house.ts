import { parseInspectionData, resolveInstallation, type WholeInstallation } from "@good-grounds/inspection";
import { Chance } from "../../examples/simulate/chance.ts";
import { inspect } from "../../examples/simulate/inspect.ts";
import type { TrueCable, TrueCircuit, TrueInstallation } from "../../examples/simulate/installation.ts";
import { ACCURACY } from "../../examples/simulate/instrument.ts";
import { smallestFile } from "../files/arbitrary-file.ts";

const FLOORS = ["ground floor", "first floor", "second floor", "loft", "rear extension", "garage"];

const flat = (line: number, cpc: number, length: number): TrueCable => ({
  kind: "flat-twin-and-cpc",
  line,
  cpc,
  length: Math.round(length),
  methods: ["C"],
});
const breaker = (rated: number) =>
  ({ standard: "BS EN 60898", type: "B", rated, kiloamperes: 6, energyClass: 3 }) as const;

type Add = (circuit: Omit<TrueCircuit, "id" | "rcd">) => void;

/** Sockets and lights of one floor. */
function addFloor(floor: string, chance: Chance, add: Add): void {
  const points = whole(chance, 3, 16);
  const ring = chance.uniform() < 0.75;
  add({
    name: `sockets, ${floor}`,
    shape: ring ? "ring" : "radial",
    load: "socket-outlets",
    device: breaker(ring ? 32 : 20),
    cable: flat(2.5, 1.5, (ring ? 20 : 10) + points * chance.between(2.5, 5)),
    points,
    ...(ring ? { ringPoints: [0.2, 0.5, 0.8] } : {}),
  });
  add({
    name: `lights, ${floor}`,
    shape: "radial",
    load: "lighting",
    device: breaker(6),
    cable: flat(chance.uniform() < 0.6 ? 1 : 1.5, 1, chance.between(12, 55)),
    points: whole(chance, 3, 14),
  });
}

/** What hangs on a way of its own, where the house has it. */
const SINGLES: readonly (readonly [
  name: string,
  load: TrueCircuit["load"],
  rated: number,
  line: number,
  cpc: number,
])[] = [
  ["cooker", "cooker", 32, 6, 2.5],
  ["shower", "shower", 40, 10, 4],
  ["immersion heater", "water-heater", 16, 2.5, 1.5],
  ["boiler", "fixed-equipment", 6, 1.5, 1],
  ["smoke alarms", "alarm", 6, 1.5, 1],
  ["car charger", "vehicle-charging", 32, 6, 2.5],
  ["garden shed", "socket-outlets", 20, 2.5, 1.5],
  ["burglar alarm", "alarm", 6, 1.5, 1],
];

function addSingles(chance: Chance, add: Add): void {
  for (const [name, load, rated, line, cpc] of SINGLES) {
    if (chance.uniform() < 0.7)
      add({
        name,
        shape: "radial",
        load,
        device: breaker(rated),
        cable: flat(line, cpc, chance.between(5, 30)),
        points: 1,
      });
  }
}

const whole = (chance: Chance, low: number, high: number) => Math.floor(chance.between(low, high + 1));

/** An invented house or shop of 4 to 21 circuits on one or two boards, drawn from a seed. */
export function randomHouse(seed: number): TrueInstallation {
  const chance = new Chance(seed);
  const circuits: TrueCircuit[] = [];
  const add: Add = (circuit) => circuits.push({ id: `c${circuits.length + 1}`, rcd: "none", ...circuit });
  for (const floor of FLOORS.slice(0, whole(chance, 1, 6))) addFloor(floor, chance, add);
  addSingles(chance, add);
  const two = circuits.length > 8 && chance.uniform() < 0.4;
  const half = Math.ceil(circuits.length / 2);
  const feed: TrueCircuit = {
    id: "f1",
    name: "feed to the second board",
    shape: "distribution",
    load: "board",
    device: breaker(63),
    rcd: "none",
    cable: { ...flat(16, 6, chance.between(5, 25)), kind: "multicore" },
  };
  const board = { location: "hall", enclosure: "metal", mainSwitch: 100 } as const;
  return {
    seed,
    celsius: whole(chance, 5, 28),
    ze: chance.between(0.1, 0.6),
    lineNeutral: chance.between(0.1, 0.4),
    volts: whole(chance, 225, 250),
    phases: 1,
    visits: [{ day: "2026-10-06", testsFrom: "09:00" }],
    boards: two
      ? [
          { ...board, id: "b1", name: "Main board", fedFrom: "supply", circuits: [feed, ...circuits.slice(0, half)] },
          {
            ...board,
            id: "b2",
            name: "Board 2",
            fedFrom: { board: "b1", circuit: "f1" },
            circuits: circuits.slice(half),
          },
        ]
      : [{ ...board, id: "b1", name: "Consumer unit", fedFrom: "supply", circuits }],
  };
}

export interface Inspected {
  readonly day: string;
  readonly seed: number;
  readonly celsius?: number;
  /** Conductor temperature is written down. */
  readonly temperatureRecorded?: boolean;
  readonly serial?: string;
  readonly accuracyStated?: boolean;
  readonly nextOn?: string;
}

/** An inspection of the house as it truly is: the instrument's noise and the day are drawn anew from the seed. */
export function inspected(house: TrueInstallation, how: Inspected): WholeInstallation {
  const {
    day,
    seed,
    celsius = house.celsius,
    temperatureRecorded = true,
    serial = "INV-1",
    accuracyStated = true,
  } = how;
  const { origin, boards } = inspect({ ...house, seed, celsius, visits: [{ day, testsFrom: "09:00" }] });
  const parsed = parseInspectionData({
    ...smallestFile(),
    id: `house-${day}`,
    inspectedOn: day,
    visits: [{ date: day }],
    people: [{ id: "inspector", name: "Invented" }],
    instruments: [{ id: "mft", kind: "tester", serial, ...(accuracyStated ? { accuracy: { ...ACCURACY } } : {}) }],
    ...(temperatureRecorded ? { conditions: { conductorTemperature: { shown: `${celsius} °C` } } } : {}),
    supply: { earthing: house.electrode === undefined ? "TN-S" : "TT", bonding: [], readings: origin },
    boards,
    ...(how.nextOn === undefined ? {} : { conclusion: { nextInspection: { by: how.nextOn, reason: "five years" } } }),
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return resolveInstallation(parsed.file);
}
