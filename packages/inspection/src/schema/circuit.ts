import { CIRCUIT_LOADS, CIRCUIT_SHAPES, GROUPINGS, REFERENCE_METHODS } from "@good-grounds/core";
import * as z from "zod";
import { CABLE_MAKE, CABLE_RUN, CABLE_SURROUNDED } from "../fields/cable.ts";
import { CIRCUIT_READINGS } from "../fields/circuit-readings.ts";
import { id, line, paragraph, sharedMisfits, stated, statedQuantity } from "./common.ts";
import { protectiveDevice, residualDevice } from "./device.ts";
import { shapeOf } from "./field-schema.ts";
import { liveBeforeContinuity } from "./safety.ts";

const cable = z.strictObject({
  ...shapeOf(CABLE_MAKE),
  cores: z.int().min(1).max(61).optional(),
  /** Every reference method the unseen route may have; one where the route is known. */
  methods: z.array(z.enum(REFERENCE_METHODS)).min(1).max(10).optional(),
  ...shapeOf(CABLE_RUN),
  grouped: z.strictObject({ arrangement: z.enum(GROUPINGS), circuits: z.int().min(1).max(100) }).optional(),
  ...shapeOf(CABLE_SURROUNDED),
});

/** The RCD that serves a circuit: none, its own, or one of the board's by id. */
const circuitRcd = stated(
  z.union([z.literal("none"), z.strictObject({ own: residualDevice }), z.strictObject({ board: id })]),
);

export const circuit = z.strictObject({
  id,
  designation: line,
  description: line,
  shape: stated(z.enum(CIRCUIT_SHAPES)).optional(),
  load: stated(z.enum(CIRCUIT_LOADS)).optional(),
  phases: stated(z.union([z.literal(1), z.literal(3)])).optional(),
  points: z.int().min(0).max(1000).optional(),
  /** Whether the circuit has socket-outlets; settles the disconnection time of larger circuits. */
  socketOutlets: stated(z.boolean()).optional(),
  device: stated(protectiveDevice).optional(),
  rcd: circuitRcd.optional(),
  cable: cable.optional(),
  designCurrent: statedQuantity("ampere", "design current").optional(),
  readings: z.strictObject(shapeOf(CIRCUIT_READINGS)).optional(),
  sharedMisfits,
  liveBeforeContinuity: liveBeforeContinuity.optional(),
  note: paragraph.optional(),
});
