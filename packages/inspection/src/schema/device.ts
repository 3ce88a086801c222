import { DEVICE_STANDARDS, DEVICE_TYPES, RCD_DELAYS, RCD_STANDARDS, RCD_TYPES } from "@good-grounds/core";
import * as z from "zod";
import { id, line, reading, stated, statedQuantity } from "./common.ts";

/** An overcurrent protective device as marked. */
export const protectiveDevice = z.strictObject({
  standard: stated(z.enum(DEVICE_STANDARDS)).optional(),
  type: stated(z.enum(DEVICE_TYPES)).optional(),
  rated: statedQuantity("ampere", "rated current").optional(),
  breakingCapacity: statedQuantity("ampere", "rated breaking capacity").optional(),
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
  standard: stated(z.enum(RCD_STANDARDS)).optional(),
  type: stated(z.enum(RCD_TYPES)).optional(),
  delay: stated(z.enum(RCD_DELAYS)).optional(),
  rated: statedQuantity("ampere", "rated current").optional(),
  residual: statedQuantity("ampere", "rated residual operating current").optional(),
  readings: z
    .strictObject({
      atRated: reading("second", "operating time at the rated residual current").optional(),
      atFive: reading("second", "operating time at five times the rated residual current").optional(),
      button: stated(z.enum(["trips", "does-not-trip"])).optional(),
    })
    .optional(),
  note: line.optional(),
});

/** A switch at the origin or in a board. */
export const mainSwitch = z.strictObject({
  standard: line.optional(),
  poles: z.int().min(1).max(4).optional(),
  rated: statedQuantity("ampere", "rated current").optional(),
  voltage: statedQuantity("volt", "rated voltage").optional(),
});
