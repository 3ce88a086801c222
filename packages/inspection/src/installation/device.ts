import { type Path, TERM } from "@good-grounds/core";
import { OVERCURRENT_DEVICE, RESIDUAL_DEVICE, RESIDUAL_READINGS, RESIDUAL_STATE } from "../fields/device.ts";
import { leavesOf } from "../fields/field.ts";
import type { Leaves } from "../fields/leaves.ts";
import { MATTER } from "../fields/matters.ts";
import type { DraftFile } from "../schema/draft.ts";
import type { OvercurrentDevice, ResidualDevice } from "./model.ts";

type BoardEntry = NonNullable<DraftFile["boards"]>[number];
type CircuitEntry = NonNullable<BoardEntry["circuits"]>[number];
type DeviceEntry = NonNullable<CircuitEntry["device"]>;
type BoardRcd = NonNullable<BoardEntry["rcds"]>[number];
type OwnRcd = Extract<CircuitEntry["rcd"], { own: unknown }>["own"];

/** An overcurrent device; where it is not known as a whole, neither is anything of it, for the same reason. */
export function overcurrentDevice(leaves: Leaves, entry: DeviceEntry | undefined, path: Path): OvercurrentDevice {
  const silent = entry !== undefined && "notKnown" in entry ? entry : undefined;
  const device = entry !== undefined && "notKnown" in entry ? undefined : entry;
  const marked =
    silent === undefined ? device : { standard: silent, type: silent, rated: silent, breakingCapacity: silent };
  return Object.freeze({
    ...leavesOf(OVERCURRENT_DEVICE, leaves, marked, path),
    path,
    energyClass: leaves.fact(MATTER.energyClass, silent ?? energyClass(device?.energyClass), [...path, "energyClass"]),
    letThrough: leaves.quantity(TERM.letThrough, silent ?? device?.letThrough?.value, [...path, "letThrough", "value"]),
    letThroughFrom: device?.letThrough?.from,
  });
}

function energyClass(mark: number | undefined): "1" | "2" | "3" | undefined {
  return mark === undefined ? undefined : (String(mark) as "1" | "2" | "3");
}

/** A device of a board; of one that does not say what it serves nobody knows whether it stands before every circuit. */
export function boardResidual(leaves: Leaves, entry: BoardRcd, path: Path): ResidualDevice {
  const servesWholeBoard = entry.serves === undefined ? undefined : entry.serves === "whole-board";
  return Object.freeze({ ...residualDevice(leaves, entry, path), servesWholeBoard });
}

/** A circuit's own device. */
export function ownResidual(leaves: Leaves, entry: OwnRcd, path: Path): ResidualDevice {
  return Object.freeze({ ...residualDevice(leaves, entry, path), servesWholeBoard: false });
}

function residualDevice(leaves: Leaves, entry: OwnRcd, path: Path): Omit<ResidualDevice, "servesWholeBoard"> {
  const { atRated, atFive, button } = leavesOf(RESIDUAL_READINGS, leaves, entry.readings, [...path, "readings"]);
  return {
    ...leavesOf(RESIDUAL_DEVICE, leaves, entry, path),
    ...leavesOf(RESIDUAL_STATE, leaves, entry, path),
    path,
    id: entry.id,
    timeAtRated: atRated,
    timeAtFive: atFive,
    button,
    whyNotTested: entry.whyNotTested,
  };
}
