import type { CircuitLoad, DeviceStandard, DeviceType, ReferenceMethod } from "@good-grounds/core";
import { perMetre } from "./cable.ts";
import { Chance } from "./chance.ts";
import { Instrument } from "./instrument.ts";

/** A circuit as it really is; the file gets what an inspector would read of it. */
export interface TrueCircuit {
  readonly id: string;
  readonly name: string;
  readonly shape: "ring" | "radial" | "distribution";
  readonly load: CircuitLoad;
  readonly device: {
    readonly standard: DeviceStandard;
    readonly type?: DeviceType;
    readonly rated: number;
    readonly kiloamperes?: number;
    readonly energyClass?: 1 | 2 | 3;
  };
  /** RCD: none, the device itself, or one of the board by id. */
  readonly rcd: "none" | "own" | string;
  readonly cable: {
    readonly kind: "flat-twin-and-cpc" | "singles" | "armoured" | "multicore";
    readonly line: number;
    readonly cpc: number;
    readonly length: number;
    readonly methods: readonly ReferenceMethod[];
    /** Length is written as a range when the route was not seen. */
    readonly lengthKnown?: boolean;
  };
  readonly designCurrent?: number;
  readonly points?: number;
  readonly phases?: 1 | 3;
  /** Insulation resistance in Ω; drawn when left out. */
  readonly insulation?: number;
  /** Extra resistance in the loop, a bad joint, Ω. */
  readonly joint?: number;
  /** Points of a ring as parts of its length. */
  readonly ringPoints?: readonly number[];
  /** Length of an unfused spur, m, at the last point. */
  readonly spur?: number;
  readonly note?: string;
  /** Members of `readings` that are replaced, for what was not taken. */
  readonly override?: Readonly<Record<string, unknown>>;
}

export interface TrueBoard {
  readonly id: string;
  readonly name: string;
  readonly location: string;
  readonly fedFrom: "supply" | { readonly board: string; readonly circuit: string };
  readonly phases?: 1 | 3;
  readonly enclosure: "metal" | "non-combustible" | "combustible" | "wood-backed";
  readonly mainSwitch: number;
  readonly rcds?: readonly {
    readonly id: string;
    readonly serves: "whole-board" | "listed";
    readonly residual: number;
    readonly delay: "general" | "S";
    readonly seconds?: number;
  }[];
  readonly conditionalRating?: object;
  readonly circuits: readonly TrueCircuit[];
}

export interface TrueInstallation {
  readonly seed: number;
  readonly celsius: number;
  /** Loop at the origin: supply loop and, on TT, the electrode. Ω. */
  readonly ze: number;
  /** Line to neutral loop at the origin, Ω. */
  readonly lineNeutral: number;
  readonly phases: 1 | 3;
  readonly day: string;
  readonly boards: readonly TrueBoard[];
}

/** Reads every board of an installation the way an inspector's instruments would. */
export function boardsOf(truth: TrueInstallation) {
  const chance = new Chance(truth.seed);
  const instrument = new Instrument(chance);
  /** Loop before each board by id, and line to neutral loop. */
  const before = new Map<string, { earth: number; neutral: number }>();
  const feeders = new Map<string, { earth: number; neutral: number }>();
  let minute = 9 * 60 + 40;
  const at = () => {
    minute += 2 + Math.floor(chance.uniform() * 3);
    const hours = String(Math.floor(minute / 60)).padStart(2, "0");
    return `${truth.day}T${hours}:${String(minute % 60).padStart(2, "0")}:00+01:00`;
  };
  const boards = truth.boards.map((board) => {
    const loop =
      board.fedFrom === "supply"
        ? { earth: truth.ze, neutral: truth.lineNeutral }
        : feeders.get(`${board.fedFrom.board} ${board.fedFrom.circuit}`);
    if (loop === undefined) throw new Error(`${board.id} is fed from a circuit that comes later`);
    before.set(board.id, loop);
    const circuits = board.circuits.map((circuit) =>
      readCircuit(circuit, board, loop, truth, chance, instrument, feeders, at),
    );
    return {
      id: board.id,
      name: board.name,
      location: board.location,
      fedFrom: board.fedFrom,
      phases: board.phases ?? truth.phases,
      enclosure: board.enclosure,
      mainSwitch: { poles: (board.phases ?? truth.phases) === 3 ? 4 : 2, rated: `${board.mainSwitch} A` },
      rcds: (board.rcds ?? []).map(({ id, serves, residual, delay, seconds }) => ({
        id,
        serves,
        standard: "BS EN 61008",
        type: "A",
        delay,
        residual: `${residual} mA`,
        readings: {
          atRated: {
            shown: instrument.rcdTime(
              seconds ?? (delay === "S" ? chance.between(0.18, 0.3) : chance.between(0.018, 0.034)),
            ),
            with: "mft",
          },
          button: "trips",
        },
      })),
      surgeProtection: "not-fitted",
      ...(board.conditionalRating === undefined ? {} : { conditionalRating: board.conditionalRating }),
      readings: {
        zdb: { shown: instrument.loop(loop.earth), with: "mft" },
        faultCurrent: { shown: instrument.faultCurrent(230 / Math.min(loop.neutral, loop.earth)), with: "mft" },
        ...(truth.phases === 3 ? { faultCurrentMethod: "line-neutral" } : {}),
        polarity: "correct",
        ...((board.phases ?? truth.phases) === 3 ? { phaseSequence: "correct" } : {}),
      },
      circuits,
    };
  });
  return { boards, instrument };
}

function readCircuit(
  circuit: TrueCircuit,
  board: TrueBoard,
  loop: { earth: number; neutral: number },
  truth: TrueInstallation,
  chance: Chance,
  instrument: Instrument,
  feeders: Map<string, { earth: number; neutral: number }>,
  at: () => string,
) {
  const { cable, device } = circuit;
  const line = perMetre(cable.line, truth.celsius, chance);
  const neutral = perMetre(cable.line, truth.celsius, chance);
  const cpc = perMetre(cable.cpc, truth.celsius, chance);
  const whole = { r1: line * cable.length, rn: neutral * cable.length, r2: cpc * cable.length };
  const ring = circuit.shape === "ring";
  const spur = circuit.spur ?? 0;
  const atRing = (a: number, b: number, x: number) => {
    const wayOut = x * a + (1 - x) * b;
    const wayBack = (1 - x) * a + x * b;
    return (wayOut * wayBack) / (wayOut + wayBack);
  };
  const r1r2 = (ring ? (whole.r1 + whole.r2) / 4 + spur * (line + cpc) : whole.r1 + whole.r2) + (circuit.joint ?? 0);
  const live = ring ? (whole.r1 + whole.rn) / 4 : whole.r1 + whole.rn;
  if (circuit.shape === "distribution") {
    feeders.set(`${board.id} ${circuit.id}`, { earth: loop.earth + r1r2, neutral: loop.neutral + live });
  }
  const insulation = () => circuit.insulation ?? Math.exp(chance.normal(Math.log(600e6), 0.6));
  const points = circuit.ringPoints ?? [];
  const shown = (text: string) => ({ shown: text, with: "mft", by: "inspector", at: at() });
  const rcdTime = chance.between(0.018, 0.034);
  const shortest = Math.max(1, Math.floor(cable.length * 0.85));
  return {
    id: circuit.id,
    designation: circuit.id.replace(/^\D+/, ""),
    description: circuit.name,
    shape: circuit.shape,
    load: circuit.load,
    phases: circuit.phases ?? 1,
    ...(circuit.points === undefined ? {} : { points: circuit.points }),
    socketOutlets: circuit.load === "socket-outlets",
    device: {
      standard: device.standard,
      ...(device.type === undefined ? {} : { type: device.type }),
      rated: `${device.rated} A`,
      ...(device.kiloamperes === undefined ? {} : { breakingCapacity: `${device.kiloamperes} kA` }),
      ...(device.energyClass === undefined ? {} : { energyClass: device.energyClass }),
    },
    rcd:
      circuit.rcd === "none"
        ? "none"
        : circuit.rcd === "own"
          ? {
              own: {
                standard: "BS EN 61009",
                type: "A",
                delay: "general",
                residual: "30 mA",
                readings: { atRated: { shown: instrument.rcdTime(rcdTime), with: "mft" }, button: "trips" },
              },
            }
          : { board: circuit.rcd },
    cable: {
      kind: cable.kind,
      insulation: cable.kind === "armoured" ? "90C-thermosetting" : "70C-thermoplastic",
      material: "copper",
      line: `${cable.line} mm²`,
      cpc: `${cable.cpc} mm²`,
      cpcArrangement: cable.kind === "singles" ? "separate" : "in-cable",
      methods: [...cable.methods],
      length:
        cable.lengthKnown === false
          ? { from: `${shortest} m`, to: `${Math.ceil(cable.length * 1.15)} m` }
          : `${cable.length} m`,
    },
    ...(circuit.designCurrent === undefined ? {} : { designCurrent: `${circuit.designCurrent} A` }),
    readings: {
      ...(ring
        ? {
            r1: shown(instrument.continuity(whole.r1)),
            rn: shown(instrument.continuity(whole.rn)),
            r2: shown(instrument.continuity(whole.r2)),
            crossLineNeutral: points.map((x, i) => ({
              point: `socket ${i + 1}`,
              reading: shown(
                instrument.continuity(
                  atRing(whole.r1, whole.rn, x) + (i === points.length - 1 ? spur * (line + neutral) : 0),
                ),
              ),
            })),
            crossLineCpc: points.map((x, i) => ({
              point: `socket ${i + 1}`,
              reading: shown(
                instrument.continuity(
                  atRing(whole.r1, whole.r2, x) + (i === points.length - 1 ? spur * (line + cpc) : 0),
                ),
              ),
            })),
          }
        : {}),
      r1r2: shown(instrument.continuity(r1r2)),
      insulationVoltage: "500 V",
      insulationLiveLive: shown(instrument.insulation(insulation())),
      insulationLiveEarth: shown(instrument.insulation(insulation())),
      polarity: "correct",
      zs: shown(instrument.loop(loop.earth + r1r2)),
      ...circuit.override,
    },
    ...(circuit.note === undefined ? {} : { note: circuit.note }),
  };
}
