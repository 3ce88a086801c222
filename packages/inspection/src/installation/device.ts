import { type Path, TERM } from "@good-grounds/core";
import { OVERCURRENT_DEVICE, RESIDUAL_DEVICE, RESIDUAL_READINGS, RESIDUAL_STATE } from "../fields/device.ts";
import { leavesOf } from "../fields/field.ts";
import type { Leaves } from "../fields/leaves.ts";
import { MATTER } from "../fields/matters.ts";
import type { InspectionFile } from "../schema/file.ts";
import type { OvercurrentDevice, ResidualDevice } from "./model.ts";

type BoardEntry = InspectionFile["boards"][number];
type CircuitEntry = BoardEntry["circuits"][number];
type DeviceEntry = NonNullable<CircuitEntry["device"]>;
type RcdEntry = NonNullable<BoardEntry["rcds"]>[number] | Extract<CircuitEntry["rcd"], { own: unknown }>["own"];

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

export function residualDevice(leaves: Leaves, entry: RcdEntry, path: Path): ResidualDevice {
  const { atRated, atFive, button } = leavesOf(RESIDUAL_READINGS, leaves, entry.readings, [...path, "readings"]);
  return Object.freeze({
    ...leavesOf(RESIDUAL_DEVICE, leaves, entry, path),
    ...leavesOf(RESIDUAL_STATE, leaves, entry, path),
    path,
    id: entry.id,
    timeAtRated: atRated,
    timeAtFive: atFive,
    button,
    whyNotTested: entry.whyNotTested,
    servesWholeBoard: "serves" in entry && entry.serves === "whole-board",
  });
}
