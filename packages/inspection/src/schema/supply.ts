import { EARTHING_SYSTEMS, OTHER_SOURCES } from "@good-grounds/core";
import * as z from "zod";
import { BOND, BOND_READINGS, BONDED_PART } from "../fields/bonding.ts";
import { BOND_CONDUCTOR, EARTHING_CONDUCTOR, SUPPLY_NEUTRAL, TAILS } from "../fields/conductor.ts";
import { SUPPLY_READINGS } from "../fields/supply-readings.ts";
import { id, line, paragraph, sharedMisfits, stated, statedQuantity } from "./common.ts";
import { mainSwitch, protectiveDevice } from "./device.ts";
import { shapeOf } from "./field-schema.ts";

/** A part that main bonding goes to, or that needs none. */
const bonding = z.strictObject({
  id,
  to: z.enum(["water", "gas", "oil", "structural-steel", "lightning-protection", "heating", "other"]),
  description: line.optional(),
  ...shapeOf(BONDED_PART),
  ...shapeOf(BOND),
  heatDamage: stated(z.boolean()).optional(),
  ...shapeOf(BOND_CONDUCTOR),
  ...shapeOf(BOND_READINGS),
});

/** The origin: what the distributor brings in and how it is earthed, protected and measured. */
export const supply = z.strictObject({
  earthing: stated(z.enum(EARTHING_SYSTEMS)).optional(),
  phases: stated(z.union([z.literal(1), z.literal(3)])).optional(),
  /** How many live conductors come in, the neutral among them. */
  liveConductors: stated(z.int().min(1).max(4)).optional(),
  current: stated(z.enum(["ac", "dc"])).optional(),
  frequency: statedQuantity("hertz", "nominal frequency").optional(),
  nominalVoltage: statedQuantity("volt", "nominal voltage to earth").optional(),
  lineVoltage: statedQuantity("volt", "nominal voltage between lines").optional(),
  public: stated(z.boolean()).optional(),
  device: stated(protectiveDevice).optional(),
  tails: z.strictObject(shapeOf(TAILS)).optional(),
  /** The supply neutral or PEN conductor, on which the size of main bonding depends under PME. */
  neutral: z.strictObject(shapeOf(SUPPLY_NEUTRAL)).optional(),
  earthingConductor: z
    .strictObject({
      ...shapeOf(EARTHING_CONDUCTOR),
      /** Whether it was found connected and continuous from the main earthing terminal to the means of earthing. */
      connected: stated(z.boolean()).optional(),
      arrangement: z.enum(["separate", "in-cable", "buried"]).optional(),
      sheathed: stated(z.boolean()).optional(),
      mechanicallyProtected: stated(z.boolean()).optional(),
    })
    .optional(),
  bonding: z.array(bonding).max(60),
  electrode: z.strictObject({ kind: line.optional(), location: line.optional() }).optional(),
  mainSwitch: mainSwitch.optional(),
  otherSources: z
    .array(
      z.strictObject({
        id,
        kind: z.enum(OTHER_SOURCES),
        rated: statedQuantity("ampere", "rated current").optional(),
        /** Whether notices warn of it, as 514.15.1 asks. */
        notice: stated(z.boolean()).optional(),
        note: line.optional(),
      }),
    )
    .max(20)
    .optional(),
  maximumDemand: z.strictObject({ value: statedQuantity("ampere", "maximum demand"), method: line }).optional(),
  readings: z.strictObject(shapeOf(SUPPLY_READINGS)).optional(),
  sharedMisfits,
  note: paragraph.optional(),
});
