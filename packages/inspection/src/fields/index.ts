import { BOARD_READINGS } from "./board-readings.ts";
import { BOND, BOND_READINGS, BONDED_PART } from "./bonding.ts";
import { CABLE_MAKE, CABLE_RUN, CABLE_SURROUNDED } from "./cable.ts";
import { CIRCUIT_READINGS } from "./circuit-readings.ts";
import { BOND_CONDUCTOR, EARTHING_CONDUCTOR, SUPPLY_NEUTRAL, TAILS } from "./conductor.ts";
import { OVERCURRENT_DEVICE, RESIDUAL_DEVICE, RESIDUAL_READINGS, RESIDUAL_STATE } from "./device.ts";
import type { FieldSet } from "./field.ts";
import { LETTING } from "./letting.ts";
import { SUPPLY_READINGS } from "./supply-readings.ts";
import { OPENING, THING_KINDS } from "./things/index.ts";

/**
 * Every field by where it belongs in the inspection file; a star stands for any member of a list. Labels, columns and
 * the glossary read what a place holds from here.
 */
export const FIELDS_AT = Object.freeze({
  "brief/letting": LETTING,
  "supply/readings": SUPPLY_READINGS,
  "supply/device": OVERCURRENT_DEVICE,
  "supply/tails": TAILS,
  "supply/neutral": SUPPLY_NEUTRAL,
  "supply/earthingConductor": EARTHING_CONDUCTOR,
  "supply/bonding/*": { ...BONDED_PART, ...BOND, ...BOND_CONDUCTOR, ...BOND_READINGS },
  "boards/*/readings": BOARD_READINGS,
  "boards/*/rcds/*": { ...RESIDUAL_DEVICE, ...RESIDUAL_STATE },
  "boards/*/rcds/*/readings": RESIDUAL_READINGS,
  "boards/*/circuits/*/device": OVERCURRENT_DEVICE,
  "boards/*/circuits/*/cable": { ...CABLE_MAKE, ...CABLE_RUN, ...CABLE_SURROUNDED },
  "boards/*/circuits/*/readings": CIRCUIT_READINGS,
  "things/places/*": THING_KINDS.places.fields,
  "things/enclosures/*": THING_KINDS.enclosures.fields,
  "things/enclosures/*/openings/*": OPENING,
  "things/sections/*": THING_KINDS.sections.fields,
  "things/joints/*": THING_KINDS.joints.fields,
  "things/supplementaryBonds/*": THING_KINDS.supplementaryBonds.fields,
  "things/electrodes/*": THING_KINDS.electrodes.fields,
  "things/loads/*": THING_KINDS.loads.fields,
  "things/surgeDevices/*": THING_KINDS.surgeDevices.fields,
  "things/arcDevices/*": THING_KINDS.arcDevices.fields,
} satisfies Readonly<Record<string, FieldSet>>);

export type { Field, FieldKind, FieldSet, LeavesOf } from "./field.ts";
export { type FieldsOf, THING_KIND_IDS, THING_KINDS, type ThingKind } from "./things/index.ts";
