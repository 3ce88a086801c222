import type { ReferenceMethod } from "@good-grounds/core";
import { METER, THERMOMETER } from "../../examples/scenarios/common.ts";
import { Chance } from "../../examples/simulate/chance.ts";
import { inspect } from "../../examples/simulate/inspect.ts";
import type { TrueBoard, TrueCable, TrueCircuit } from "../../examples/simulate/installation.ts";

const DAY = "2026-06-10";

type Draw = <T>(...from: readonly T[]) => T;

interface Pattern {
  readonly name: string;
  readonly shape: TrueCircuit["shape"];
  readonly load: TrueCircuit["load"];
  readonly rated: number;
  readonly sizes: readonly (readonly [line: number, cpc: number])[];
  readonly length: readonly [number, number];
}

/** Circuits as dwellings and small shops have them. */
const PATTERNS: readonly Pattern[] = [
  { name: "sockets", shape: "ring", load: "socket-outlets", rated: 32, sizes: [[2.5, 1.5]], length: [28, 95] },
  {
    name: "sockets, radial",
    shape: "radial",
    load: "socket-outlets",
    rated: 20,
    sizes: [
      [2.5, 1.5],
      [4, 1.5],
    ],
    length: [8, 45],
  },
  {
    name: "lights",
    shape: "radial",
    load: "lighting",
    rated: 6,
    sizes: [
      [1, 1],
      [1.5, 1],
    ],
    length: [12, 65],
  },
  { name: "cooker", shape: "radial", load: "cooker", rated: 32, sizes: [[6, 2.5]], length: [5, 22] },
  {
    name: "shower",
    shape: "radial",
    load: "shower",
    rated: 40,
    sizes: [
      [6, 2.5],
      [10, 4],
    ],
    length: [6, 25],
  },
  { name: "boiler", shape: "radial", load: "fixed-equipment", rated: 6, sizes: [[1.5, 1]], length: [4, 25] },
  { name: "immersion heater", shape: "radial", load: "water-heater", rated: 16, sizes: [[2.5, 1.5]], length: [5, 22] },
  { name: "smoke alarms", shape: "radial", load: "alarm", rated: 6, sizes: [[1.5, 1]], length: [8, 35] },
];

/** Part of circuits that have something real the matter with them: none of it is a doubt about the figures. */
const WITH_JOINT = 0.04;
const WITH_PARALLEL_PATH = 0.03;
const WITH_SPUR = 0.2;

function circuitOf(i: number, chance: Chance, draw: Draw): TrueCircuit {
  const { name, shape, load, rated, sizes, length } = draw(...PATTERNS);
  const [line, cpc] = draw(...sizes);
  const cable: TrueCable = {
    kind: "flat-twin-and-cpc",
    line,
    cpc,
    length: Math.round(chance.between(...length)),
    methods: ["C"] satisfies readonly ReferenceMethod[],
    lengthKnown: chance.uniform() < 0.8,
  };
  const points = Array.from(
    { length: 4 + Math.floor(chance.uniform() * 5) },
    (_, k, all = k + 1) => 0.08 + 0.12 * k + 0.01 * (all % 2),
  );
  return {
    id: `c${i + 1}`,
    name: `${name} ${i + 1}`,
    shape,
    load,
    device: { standard: "BS EN 61009", type: "B", rated, kiloamperes: 6, energyClass: 3 },
    rcd: "own",
    cable,
    points: load === "lighting" ? 8 : 3,
    ...(shape === "ring" ? { ringPoints: points } : {}),
    ...(shape === "ring" && chance.uniform() < WITH_SPUR ? { spur: chance.between(1, 6) } : {}),
    ...(chance.uniform() < WITH_JOINT ? { joint: chance.between(0.1, 1.5) } : {}),
    ...(chance.uniform() < WITH_PARALLEL_PATH ? { parallelPath: chance.between(0.05, 1) } : {}),
    ...(chance.uniform() < 0.05 ? { untested: "in use" } : {}),
    ...(chance.uniform() < 0.1 ? { insulation: chance.between(0.8e6, 40e6) } : {}),
  };
}

/**
 * An inspection of a random installation on TN or TT with one board, by the simulator of the examples: readings with its
 * noise, and faults that are really there. `again` inspects the same installation at another time.
 */
export function randomInstallation(seed: number, again = false) {
  const chance = new Chance(seed * 7919 + 13);
  const draw: Draw = (...from) => from[Math.floor(chance.uniform() * from.length)] as (typeof from)[number];
  const tt = chance.uniform() < 0.15;
  const electrode = chance.between(15, 120);
  const outside = chance.between(0.1, 0.6);
  const board: TrueBoard = {
    id: "cu",
    name: "Consumer unit",
    location: "hall",
    fedFrom: "supply",
    enclosure: "metal",
    mainSwitch: 100,
    circuits: Array.from({ length: 6 + Math.floor(chance.uniform() * 13) }, (_, i) => circuitOf(i, chance, draw)),
  };
  const { boards, origin } = inspect({
    seed: again ? seed + 500_000 : seed,
    celsius: chance.between(5, 24),
    ze: tt ? electrode : outside,
    ...(tt ? { electrode } : {}),
    lineNeutral: outside * 0.8,
    volts: chance.between(228, 248),
    phases: 1,
    visits: [{ day: DAY, testsFrom: "09:00" }],
    boards: [board],
  });
  return {
    format: "good-grounds-inspection",
    version: 3,
    id: again ? `random-${seed}-earlier` : `random-${seed}`,
    invented: true,
    edition: "2018+A4",
    inspectedOn: DAY,
    brief: {
      client: { name: "Invented client" },
      premises: { address: ["1 Invented Lane"] },
      use: "dwelling",
      tenure: "private-rented",
      nation: "england",
      purpose: "simulated job",
      records: [],
    },
    visits: [{ date: DAY, arrived: `${DAY}T08:40:00+01:00`, left: `${DAY}T18:00:00+01:00` }],
    people: [{ id: "inspector", name: "Invented inspector" }],
    instruments: [METER, THERMOMETER],
    conditions: { conductorTemperature: { shown: `${chance.between(6, 24).toFixed(0)} °C`, with: "thermometer" } },
    extent: { covered: "everything", sampling: [] },
    limitations: [],
    supply: { earthing: tt ? "TT" : "TN-C-S", phases: 1, nominalVoltage: "230 V", bonding: [], readings: origin },
    boards,
    inspected: [],
    observations: [],
    photographs: [],
    signatures: [],
  };
}
