import { CONDUCTOR_MATERIALS, EARTHING_SYSTEMS, FAULT_CURRENT_METHODS, OTHER_SOURCES } from "@good-grounds/core";
import * as z from "zod";
import { id, line, paragraph, reading, sharedMisfits, stated, statedQuantity } from "./common.ts";
import { mainSwitch, protectiveDevice } from "./device.ts";

const conductor = z.strictObject({
  size: statedQuantity("square-millimetre", "cross-sectional area").optional(),
  material: stated(z.enum(CONDUCTOR_MATERIALS)).optional(),
  length: statedQuantity("metre", "length").optional(),
});

/** A part that main bonding goes to, or that needs none. */
const bonding = z.strictObject({
  id,
  to: z.enum(["water", "gas", "oil", "structural-steel", "lightning-protection", "heating", "other"]),
  description: line.optional(),
  /** Whether the part is an extraneous-conductive-part; a plastic service is not. */
  extraneous: stated(z.boolean()).optional(),
  connected: stated(z.boolean()).optional(),
  heatDamage: stated(z.boolean()).optional(),
  ...conductor.shape,
  resistance: reading("ohm", "resistance of the bonding conductor").optional(),
});

/** The origin: what the distributor brings in and how it is earthed, protected and measured. */
export const supply = z.strictObject({
  earthing: stated(z.enum(EARTHING_SYSTEMS)).optional(),
  phases: stated(z.union([z.literal(1), z.literal(3)])).optional(),
  nominalVoltage: statedQuantity("volt", "nominal voltage to earth").optional(),
  public: stated(z.boolean()).optional(),
  device: stated(protectiveDevice).optional(),
  tails: conductor.optional(),
  /** The supply neutral or PEN conductor, on which the size of main bonding depends under PME. */
  neutral: conductor.optional(),
  earthingConductor: conductor
    .extend({
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
        note: line.optional(),
      }),
    )
    .max(20)
    .optional(),
  maximumDemand: z.strictObject({ value: statedQuantity("ampere", "maximum demand"), method: line }).optional(),
  readings: z
    .strictObject({
      ze: reading("ohm", "external earth fault loop impedance").optional(),
      ra: reading("ohm", "earth electrode resistance").optional(),
      lineNeutralLoop: reading("ohm", "line to neutral loop impedance at the origin").optional(),
      faultCurrent: reading("ampere", "prospective fault current at the origin").optional(),
      faultCurrentMethod: stated(z.enum(FAULT_CURRENT_METHODS)).optional(),
      earthFaultCurrent: reading("ampere", "prospective earth fault current at the origin").optional(),
      voltage: reading("volt", "supply voltage, line to neutral").optional(),
      polarity: stated(z.enum(["correct", "incorrect"])).optional(),
      phaseSequence: stated(z.enum(["correct", "incorrect"])).optional(),
    })
    .optional(),
  sharedMisfits,
  note: paragraph.optional(),
});
