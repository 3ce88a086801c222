import type { Chance } from "../../examples/simulate/chance.ts";
import { inspect, METER_ID } from "../../examples/simulate/inspect.ts";
import type { TrueBoard, TrueCircuit, TrueInstallation } from "../../examples/simulate/installation.ts";
import { ACCURACY } from "../../examples/simulate/instrument.ts";

const pick = <T>(chance: Chance, list: readonly T[]): T => list[Math.floor(chance.uniform() * list.length)] as T;

/** Final circuits as houses and shops have them: name, load, line and protective conductor, rating, lengths. */
const RADIALS = [
  ["cooker", "cooker", 6, 2.5, 32, 6, 18],
  ["shower", "shower", 10, 4, 40, 8, 22],
  ["immersion heater", "water-heater", 2.5, 1.5, 16, 6, 20],
  ["lights", "lighting", 1.5, 1, 6, 15, 45],
  ["lights, upper floor", "lighting", 1, 1, 6, 15, 40],
  ["smoke alarms", "alarm", 1.5, 1, 6, 10, 30],
  ["boiler", "fixed-equipment", 2.5, 1.5, 16, 5, 20],
  ["sockets, kitchen", "socket-outlets", 4, 1.5, 32, 10, 30],
  ["garage", "socket-outlets", 2.5, 2.5, 20, 12, 40],
] as const;

function radial(chance: Chance, id: string): TrueCircuit {
  const [name, load, line, cpc, rated, shortest, longest] = pick(chance, RADIALS);
  const kind = line === 2.5 && cpc === 2.5 ? "armoured" : "flat-twin-and-cpc";
  return {
    id,
    name,
    shape: "radial",
    load,
    device: { standard: "BS EN 61009", type: "B", rated, kiloamperes: 6 },
    rcd: "own",
    cable: {
      kind,
      line,
      cpc,
      length: Math.round(chance.between(shortest, longest)),
      methods: ["C"],
      lengthKnown: chance.uniform() < 0.75,
    },
    points: 4,
  };
}

function ring(chance: Chance, id: string): TrueCircuit {
  return {
    id,
    name: "sockets",
    shape: "ring",
    load: "socket-outlets",
    device: { standard: "BS EN 61009", type: "B", rated: 32, kiloamperes: 6 },
    rcd: "own",
    cable: {
      kind: "flat-twin-and-cpc",
      line: 2.5,
      cpc: 1.5,
      length: Math.round(chance.between(30, 80)),
      methods: ["C"],
    },
    points: 8,
    ringPoints: [0.1, 0.3, 0.5, 0.7, 0.9],
    ...(chance.uniform() < 0.3 ? { spur: Math.round(chance.between(2, 5)) } : {}),
  };
}

const SYSTEMS = ["TN-C-S", "TN-C-S", "TN-S", "TT"] as const;

/** An installation as it is, sound in everything, and what its system is. */
export interface Sound {
  readonly truth: TrueInstallation;
  readonly system: (typeof SYSTEMS)[number];
}

/** Draws a sound installation: one board, or one with a second fed from it. */
export function randomInstallation(seed: number, chance: Chance): Sound {
  const system = pick(chance, SYSTEMS);
  const electrode = system === "TT" ? Math.round(chance.between(25, 140)) : undefined;
  const lineNeutral = chance.between(0.12, 0.3);
  const ze =
    electrode === undefined
      ? system === "TN-C-S"
        ? lineNeutral + chance.between(0, 0.03)
        : chance.between(0.3, 0.7)
      : electrode + chance.between(0.3, 1.5);
  const count = Math.floor(chance.between(5, 10));
  const circuits = Array.from({ length: count }, (_, i) =>
    i < 2 && chance.uniform() < 0.7 ? ring(chance, `c${i + 1}`) : radial(chance, `c${i + 1}`),
  );
  const second = chance.uniform() < 0.25;
  const feed: TrueCircuit = {
    id: `c${count + 1}`,
    name: "feed to the outbuilding",
    shape: "distribution",
    load: "board",
    device: { standard: "BS EN 60898", type: "C", rated: 40, kiloamperes: 6 },
    rcd: "none",
    cable: { kind: "armoured", line: 10, cpc: 10, length: Math.round(chance.between(10, 40)), methods: ["D"] },
  };
  const board = (id: string, own: readonly TrueCircuit[], fedFrom: TrueBoard["fedFrom"]): TrueBoard => ({
    id,
    name: id,
    location: "hall",
    fedFrom,
    enclosure: "metal",
    mainSwitch: 100,
    rcds: [{ id: `${id}-s`, serves: "whole-board", residual: 100, delay: "S" }],
    circuits: own,
  });
  return {
    system,
    truth: {
      seed,
      celsius: Math.round(chance.between(4, 24)),
      ze,
      ...(electrode === undefined ? {} : { electrode }),
      lineNeutral,
      volts: chance.between(222, 250),
      phases: 1,
      visits: [{ day: "2026-10-06", testsFrom: "09:10" }],
      boards: [
        board("cu", second ? [...circuits, feed] : circuits, "supply"),
        ...(second
          ? [
              board(
                "out",
                Array.from({ length: 3 }, (_, i) => radial(chance, `o${i + 1}`)),
                { board: "cu", circuit: feed.id },
              ),
            ]
          : []),
      ],
    },
  };
}

export interface Shown {
  shown: string;
}

/** What a test may change of a circuit as written. */
export interface WrittenCircuit {
  id: string;
  designation: string;
  shape: string;
  device: { standard: string };
  rcd: { own: { delay: string; readings: { atRated: Shown } } } | string;
  cable: { cpc: string; line: string; length: string | { from: string; to: string }; lengthFound?: string };
  readings: Record<string, Shown | string | { point: string; reading: Shown }[]>;
}

export interface WrittenFile {
  supply: { earthing: string; readings: Record<string, Shown | string> };
  boards: {
    id: string;
    readings: Record<string, Shown | string>;
    rcds: { id: string; delay: string; readings: { atRated: Shown } }[];
    circuits: WrittenCircuit[];
  }[];
}

/** The inspection file of an installation, as an inspector with a meter of stated accuracy writes it. */
export function writtenFile({ truth, system }: Sound): WrittenFile {
  const { origin, boards } = inspect(truth);
  const file = {
    format: "good-grounds-inspection",
    version: 3,
    id: `simulated-${truth.seed}`,
    invented: true,
    edition: "2018+A4",
    inspectedOn: "2026-10-06",
    brief: {
      client: { name: "Invented" },
      premises: { address: ["1 Invented Lane"], description: "simulated" },
      use: "dwelling",
      tenure: "owner-occupied",
      nation: "england",
      purpose: "simulation",
      records: [],
    },
    visits: [{ date: "2026-10-06" }],
    people: [{ id: "inspector", name: "Invented", position: "inspector" }],
    instruments: [{ id: METER_ID, kind: "multifunction tester", serial: "invented", accuracy: { ...ACCURACY } }],
    conditions: { conductorTemperature: { shown: `${truth.celsius} °C` } },
    extent: { covered: "everything", sampling: [] },
    limitations: [],
    supply: {
      earthing: system,
      phases: 1,
      nominalVoltage: "230 V",
      public: true,
      device: { standard: "BS 1361", rated: "100 A" },
      bonding: [],
      readings: origin,
    },
    boards,
    inspected: [],
    observations: [],
    photographs: [],
    signatures: [],
  };
  const written = JSON.parse(JSON.stringify(file)) as WrittenFile;
  lengthsFound(written, "taped");
  return written;
}

/** Sets down how the lengths that stand as one figure were found. */
function lengthsFound({ boards }: WrittenFile, how: "taped" | "by-drawing"): void {
  for (const { cable } of boards.flatMap(({ circuits }) => circuits)) {
    if (typeof cable.length === "string") cable.lengthFound = how;
  }
}

/** The stated accuracy of the two ranges, part of the reading and ohms, half of which the simulated meter keeps to. */
const CONTINUITY = [0.02, 0.02] as const;
const LOOP = [0.05, 0.03] as const;

/**
 * The same file by a worse meter and a hasty hand: every reading moved again, so that errors reach the whole of the
 * stated accuracy, and lengths written a twelfth short or long.
 */
export function roughened(file: WrittenFile, chance: Chance): WrittenFile {
  const moved = (reading: unknown, [part, ohms]: readonly [number, number]) => {
    const { shown } = reading as Shown;
    const value = Number.parseFloat(shown);
    if (!shown.endsWith(" Ω") || shown.startsWith(">")) return;
    const half = (value * part + ohms) / 2;
    (reading as Shown).shown = `${Math.max(0, value + chance.between(-half, half)).toFixed(2)} Ω`;
  };
  moved(file.supply.readings.ze, LOOP);
  for (const { readings, circuits } of file.boards) {
    moved(readings.zdb, LOOP);
    for (const circuit of circuits) {
      for (const key of ["r1", "rn", "r2", "r1r2"]) {
        if (circuit.readings[key] !== undefined) moved(circuit.readings[key], CONTINUITY);
      }
      moved(circuit.readings.zs, LOOP);
      const { length } = circuit.cable;
      if (typeof length === "string") {
        circuit.cable.length = `${Math.max(1, Math.round(Number.parseFloat(length) * chance.between(0.92, 1.08)))} m`;
      }
    }
  }
  lengthsFound(file, "by-drawing");
  return file;
}
