import * as z from "zod";
import { OVERCURRENT_DEVICE, RESIDUAL_DEVICE, RESIDUAL_READINGS, RESIDUAL_STATE } from "../fields/device.ts";
import { id, line, stated, statedQuantity } from "./common.ts";
import { shapeOf } from "./field-schema.ts";

/** An overcurrent protective device as marked. */
export const protectiveDevice = z.strictObject({
  ...shapeOf(OVERCURRENT_DEVICE),
  /** Energy limiting class 1, 2 or 3 of BS EN 60898 devices, the boxed figure on the label. */
  energyClass: z.int().min(1).max(3).optional(),
  /** The maker's let-through energy at the prospective fault current, where held, and what it is taken from. */
  letThrough: z
    .strictObject({ value: statedQuantity("ampere-squared-second", "let-through energy"), from: line })
    .optional(),
  note: line.optional(),
});

/** A residual current device with its tests. */
export const residualDevice = z.strictObject({
  id: id.optional(),
  ...shapeOf(RESIDUAL_DEVICE),
  readings: z.strictObject(shapeOf(RESIDUAL_READINGS)).optional(),
  ...shapeOf(RESIDUAL_STATE),
  /** Why it cannot be tested, where that is so. */
  whyNotTested: line.optional(),
  note: line.optional(),
});

/** A switch at the origin or in a board. */
export const mainSwitch = z.strictObject({
  /** Whether there is one; left out where what it is says so. */
  fitted: stated(z.boolean()).optional(),
  standard: line.optional(),
  poles: z.int().min(1).max(4).optional(),
  rated: statedQuantity("ampere", "rated current").optional(),
  voltage: statedQuantity("volt", "rated voltage").optional(),
});
