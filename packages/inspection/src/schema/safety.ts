import * as z from "zod";
import { PRECAUTIONS } from "../precautions.ts";
import { id, moment, paragraph } from "./common.ts";

/** One step taken for safety, or why it did not arise. */
export const precaution = z.strictObject({
  step: z.enum(PRECAUTIONS),
  outcome: z.enum(["done", "not-applicable"]),
  at: moment,
  by: id.optional(),
});

const done = z.strictObject({ at: moment, by: id.optional() });

/** A time during which the earthing conductor was disconnected for a test; without `on` it still is. */
export const earthingOff = z.strictObject({ off: done, on: done.optional() });

/** Why a circuit was tested live before its protective conductor was proved. */
export const liveBeforeContinuity = z.strictObject({ reason: paragraph, at: moment, by: id.optional() });
