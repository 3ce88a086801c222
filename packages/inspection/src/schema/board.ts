import { DEVICE_STANDARDS } from "@good-grounds/core";
import * as z from "zod";
import { BOARD_READINGS } from "../fields/board-readings.ts";
import { circuit } from "./circuit.ts";
import { id, line, paragraph, sharedMisfits, stated, statedQuantity } from "./common.ts";
import { mainSwitch, residualDevice } from "./device.ts";
import { shapeOf } from "./field-schema.ts";

export const board = z.strictObject({
  id,
  name: line,
  location: line.optional(),
  /** The supply, or the circuit of another board. */
  fedFrom: z.union([z.literal("supply"), z.strictObject({ board: id, circuit: id })]),
  phases: stated(z.union([z.literal(1), z.literal(3)])).optional(),
  enclosure: stated(z.enum(["metal", "non-combustible", "combustible", "wood-backed"])).optional(),
  mainSwitch: mainSwitch.optional(),
  /** Devices that serve several circuits. `whole-board`: every circuit is behind it, ahead of any of its own. */
  rcds: z
    .array(residualDevice.extend({ id, serves: z.enum(["whole-board", "listed"]) }))
    .max(60)
    .optional(),
  /** Conditional short-circuit rating of the assembly, and the upstream device it is tied to. */
  conditionalRating: z
    .strictObject({
      value: statedQuantity("ampere", "conditional short-circuit rating"),
      upstream: z.strictObject({
        standard: z.enum(DEVICE_STANDARDS),
        rated: statedQuantity("ampere", "rated current"),
      }),
      devicesOfOneMake: stated(z.boolean()).optional(),
    })
    .optional(),
  readings: z.strictObject(shapeOf(BOARD_READINGS)).optional(),
  circuits: z.array(circuit).max(400),
  sharedMisfits,
  note: paragraph.optional(),
});
