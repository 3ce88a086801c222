import { fact, factNotKnown, type Path, TERM } from "@good-grounds/core";
import { CABLE_MAKE, CABLE_RUN, CABLE_SURROUNDED } from "../fields/cable.ts";
import { CIRCUIT_READINGS } from "../fields/circuit-readings.ts";
import { leavesOf } from "../fields/field.ts";
import type { Leaves } from "../fields/leaves.ts";
import { MATTER } from "../fields/matters.ts";
import type { InspectionFile } from "../schema/file.ts";
import { overcurrentDevice, residualDevice } from "./device.ts";
import type { Board, Cable, Circuit, CircuitReadings, ResidualProtection } from "./model.ts";
import { phases } from "./phases.ts";

type CircuitEntry = InspectionFile["boards"][number]["circuits"][number];

export function resolveCircuit(
  leaves: Leaves,
  file: InspectionFile,
  board: Board,
  entry: CircuitEntry,
  path: Path,
): Circuit {
  return Object.freeze({
    path,
    id: entry.id,
    designation: entry.designation,
    description: entry.description,
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
  const { rcd } = entry;
  const present = fact(MATTER.rcdPresent, true, path);
  if (rcd === undefined || (rcd !== "none" && "notKnown" in rcd)) {
    if (whole.length > 0)
      return Object.freeze({ present: fact(MATTER.rcdPresent, true, whole[0]?.path ?? path), devices: whole });
    const unknown =
      rcd === undefined
        ? factNotKnown(MATTER.rcdPresent, path)
        : factNotKnown(MATTER.rcdPresent, path, rcd.notKnown, rcd.reason);
    return Object.freeze({ present: unknown, devices: [] });
  }
  if (rcd === "none") {
    if (whole.length === 0) return Object.freeze({ present: fact(MATTER.rcdPresent, false, path), devices: [] });
    return Object.freeze({ present: fact(MATTER.rcdPresent, true, whole[0]?.path ?? path), devices: whole });
  }
  if ("own" in rcd) {
    const own = residualDevice(leaves, rcd.own, [...path, "own"]);
    return Object.freeze({ present, devices: Object.freeze([own, ...whole]) });
  }
  const listed = board.rcds.filter((candidate) => candidate.id === rcd.board);
  const rest = whole.filter((candidate) => candidate.id !== rcd.board);
  return Object.freeze({ present, devices: Object.freeze([...listed, ...rest]) });
}

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
    groupedCircuits: leaves.quantity(TERM.count, grouped === undefined ? undefined : String(grouped.circuits), [
      ...path,
      "grouped",
      "circuits",
    ]),
  });
}

/** The conductor temperature stated for all circuits holds where a circuit has none of its own. */
function circuitReadings(leaves: Leaves, file: InspectionFile, circuit: CircuitEntry, path: Path): CircuitReadings {
  const own = leavesOf(CIRCUIT_READINGS, leaves, circuit.readings, path);
  const common = file.conditions?.conductorTemperature;
  if (circuit.readings?.temperature !== undefined || common === undefined) return Object.freeze({ ...own, path });
  const at: Path = ["conditions", "conductorTemperature"];
  return Object.freeze({ ...own, path, temperature: CIRCUIT_READINGS.temperature.leaf(leaves, common, at) });
}
