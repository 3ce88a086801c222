import {
  CABLE_KINDS,
  CIRCUIT_LOADS,
  CIRCUIT_SHAPES,
  CONDUCTOR_MATERIALS,
  CPC_ARRANGEMENTS,
  GROUPINGS,
  INSULATIONS,
  REFERENCE_METHODS,
} from "@good-grounds/core";
import * as z from "zod";
import { id, line, paragraph, reading, sharedMisfits, stated, statedQuantity } from "./common.ts";
import { protectiveDevice, residualDevice } from "./device.ts";
import { liveBeforeContinuity } from "./safety.ts";

const cable = z.strictObject({
  kind: stated(z.enum(CABLE_KINDS)).optional(),
  insulation: stated(z.enum(INSULATIONS)).optional(),
  material: stated(z.enum(CONDUCTOR_MATERIALS)).optional(),
  line: statedQuantity("square-millimetre", "size of the line conductor").optional(),
  neutral: statedQuantity("square-millimetre", "size of the neutral conductor").optional(),
  cpc: statedQuantity("square-millimetre", "size of the protective conductor").optional(),
  cpcArrangement: stated(z.enum(CPC_ARRANGEMENTS)).optional(),
  cores: z.int().min(1).max(61).optional(),
  /** Every reference method the unseen route may have; one where the route is known. */
  methods: z.array(z.enum(REFERENCE_METHODS)).min(1).max(10).optional(),
  length: statedQuantity("metre", "length of the cable").optional(),
  ambient: statedQuantity("celsius", "ambient temperature along the route").optional(),
  grouped: z.strictObject({ arrangement: z.enum(GROUPINGS), circuits: z.int().min(1).max(100) }).optional(),
  /** Length wholly surrounded by thermal insulation, where the reference method does not already cover it. */
  surroundedByInsulation: statedQuantity("metre", "length surrounded by thermal insulation").optional(),
});

const ringPoint = (meaning: string) => z.strictObject({ point: line, reading: reading("ohm", meaning) });

const circuitReadings = z.strictObject({
  temperature: reading("celsius", "conductor temperature during the tests").optional(),
  r1: reading("ohm", "end-to-end resistance of the ring line conductor").optional(),
  rn: reading("ohm", "end-to-end resistance of the ring neutral conductor").optional(),
  r2: reading("ohm", "end-to-end resistance of the ring protective conductor").optional(),
  crossLineNeutral: z.array(ringPoint("line to neutral reading, ring cross-connected")).max(200).optional(),
  crossLineCpc: z.array(ringPoint("line to protective conductor reading, ring cross-connected")).max(200).optional(),
  r1r2: reading("ohm", "R1+R2 at the furthest point").optional(),
  r2Only: reading("ohm", "R2 by the long-lead method").optional(),
  insulationVoltage: stated(z.enum(["250 V", "500 V", "1000 V"])).optional(),
  insulationLiveLive: reading("ohm", "insulation resistance between live conductors").optional(),
  insulationLiveEarth: reading("ohm", "insulation resistance between live conductors and earth").optional(),
  /** The circuit's neutral, off its bar, against the neutrals of all others: shows a neutral that circuits share. */
  insulationBetweenNeutrals: reading(
    "ohm",
    "insulation resistance between the neutral and those of the other circuits",
  ).optional(),
  polarity: stated(z.enum(["correct", "incorrect"])).optional(),
  zs: reading("ohm", "earth fault loop impedance at the furthest point").optional(),
  faultCurrent: reading("ampere", "prospective fault current").optional(),
  leakage: reading("ampere", "protective conductor current in service").optional(),
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
  readings: circuitReadings.optional(),
  sharedMisfits,
  liveBeforeContinuity: liveBeforeContinuity.optional(),
  note: paragraph.optional(),
});
