import * as z from "zod";
import { id, moment, paragraph } from "./common.ts";

/** Steps taken for safety, in the order of a visit. The words for each belong to who shows them. */
export const PRECAUTIONS = [
  "start.competent",
  "start.hazards",
  "start.life-support",
  "start.told",
  "covers.isolated",
  "covers.locked",
  "covers.second-supplies",
  "covers.tester-before",
  "covers.dead",
  "covers.tester-after",
  "insulation.people-away",
  "insulation.electronics",
  "insulation.surge",
  "live.justified",
  "live.leads",
  "live.footing",
  "live.others-away",
  "leave.earthing",
  "leave.bonding",
  "leave.links",
  "leave.covers",
  "leave.rcd-buttons",
  "leave.alarms",
  "leave.freezers",
  "leave.boilers",
  "leave.locks",
  "leave.told",
] as const;

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
