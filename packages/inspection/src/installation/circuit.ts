import { fact, factNotKnown, type Path, TERM } from "@good-grounds/core";
import { CABLE_MAKE, CABLE_RUN, CABLE_SURROUNDED } from "../fields/cable.ts";
import { CIRCUIT_READINGS } from "../fields/circuit-readings.ts";
import { leavesOf } from "../fields/field.ts";
import type { Leaves } from "../fields/leaves.ts";
import { MATTER } from "../fields/matters.ts";
import type { DraftFile } from "../schema/draft.ts";
import { overcurrentDevice, ownResidual } from "./device.ts";
import type { Board, Cable, Circuit, CircuitReadings, ResidualProtection } from "./model.ts";
import { phases } from "./phases.ts";

type CircuitEntry = NonNullable<NonNullable<DraftFile["boards"]>[number]["circuits"]>[number];

export function resolveCircuit(
  leaves: Leaves,
  file: DraftFile,
  board: Board,
  entry: CircuitEntry,
  path: Path,
): Circuit {
  return Object.freeze({
    path,
    id: entry.id,
    designation: entry.designation ?? "",
    description: entry.description ?? "",
    board,
    shape: leaves.fact(MATTER.circuitShape, entry.shape, [...path, "shape"]),
    load: leaves.fact(MATTER.circuitLoad, entry.load, [...path, "load"]),
    phases: phases(leaves, entry.phases, [...path, "phases"]),
    points: entry.points,
    socketOutlets: leaves.fact(MATTER.socketOutlets, entry.socketOutlets, [...path, "socketOutlets"]),
    device: overcurrentDevice(leaves, entry.device, [...path, "device"]),
    residual: residualProtection(leaves, board, entry, [...path, "rcd"]),
    cable: cable(leaves, entry, [...path, "cable"]),
    designCurrent: leaves.quantity(TERM.designCurrent, entry.designCurrent, [...path, "designCurrent"]),
    readings: circuitReadings(leaves, file, entry, [...path, "readings"]),
  });
}

function residualProtection(leaves: Leaves, board: Board, entry: CircuitEntry, path: Path): ResidualProtection {
  const whole = board.rcds.filter((rcd) => rcd.servesWholeBoard);
  const maybe = board.rcds.find((rcd) => rcd.servesWholeBoard === undefined);
  const { rcd } = entry;
  if (rcd !== undefined && rcd !== "none" && !("notKnown" in rcd)) {
    const own =
      "own" in rcd
        ? [ownResidual(leaves, rcd.own, [...path, "own"])]
        : board.rcds.filter((candidate) => candidate.id === rcd.board);
    const devices = [...own, ...whole.filter((candidate) => !own.includes(candidate))];
    return Object.freeze({
      present: fact(MATTER.rcdPresent, true, path),
      devices: Object.freeze(devices),
      unseen: own.length === 0 ? factNotKnown(MATTER.rcdPresent, [...path, "board"]) : undefined,
    });
  }
  const [first] = whole;
  if (first !== undefined)
    return Object.freeze({
      present: fact(MATTER.rcdPresent, true, first.path),
      devices: Object.freeze(whole),
      unseen: undefined,
    });
  // A device that may stand before every circuit leaves open whether one stands before this.
  if (rcd === "none" && maybe !== undefined)
    return Object.freeze({
      present: factNotKnown(MATTER.rcdPresent, [...maybe.path, "serves"]),
      devices: NONE,
      unseen: undefined,
    });
  if (rcd === "none")
    return Object.freeze({ present: fact(MATTER.rcdPresent, false, path), devices: NONE, unseen: undefined });
  return Object.freeze({
    present:
      rcd === undefined
        ? factNotKnown(MATTER.rcdPresent, path)
        : factNotKnown(MATTER.rcdPresent, path, rcd.notKnown, rcd.reason),
    devices: NONE,
    unseen: undefined,
  });
}

const NONE: readonly [] = Object.freeze([]);

function cable(leaves: Leaves, { cable: entry }: CircuitEntry, path: Path): Cable {
  const grouped = entry?.grouped;
  return Object.freeze({
    ...leavesOf(CABLE_MAKE, leaves, entry, path),
    ...leavesOf(CABLE_RUN, leaves, entry, path),
    ...leavesOf(CABLE_SURROUNDED, leaves, entry, path),
    path,
    cores: entry?.cores,
    methods: Object.freeze(
      (entry?.methods ?? []).map((method, i) => fact(MATTER.method, method, [...path, "methods", i])),
    ),
    grouping: leaves.fact(MATTER.grouping, grouped?.arrangement, [...path, "grouped", "arrangement"]),
    groupedCircuits: leaves.quantity(
      TERM.count,
      grouped?.circuits === undefined ? undefined : String(grouped.circuits),
      [...path, "grouped", "circuits"],
    ),
  });
}

/** The conductor temperature stated for all circuits holds where a circuit has none of its own. */
function circuitReadings(leaves: Leaves, file: DraftFile, circuit: CircuitEntry, path: Path): CircuitReadings {
  const own = leavesOf(CIRCUIT_READINGS, leaves, circuit.readings, path);
  const common = file.conditions?.conductorTemperature;
  if (circuit.readings?.temperature !== undefined || common === undefined) return Object.freeze({ ...own, path });
  const at: Path = ["conditions", "conductorTemperature"];
  return Object.freeze({ ...own, path, temperature: CIRCUIT_READINGS.temperature.leaf(leaves, common, at) });
}
