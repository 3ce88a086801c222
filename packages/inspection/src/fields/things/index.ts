import type { FieldSet } from "../field.ts";
import { ELECTRODE } from "./electrode.ts";
import { ENCLOSURE, OPENING } from "./enclosure.ts";
import { JOINT } from "./joint.ts";
import { LOAD } from "./load.ts";
import { PLACE } from "./place.ts";
import { ARC_DEVICE, SURGE_DEVICE } from "./protective.ts";
import { SECTION } from "./section.ts";
import { SUPPLEMENTARY_BOND } from "./supplementary-bond.ts";

/** Every kind of thing by the name of its list in the file: what one is called, and what may be recorded of it. */
export const THING_KINDS = Object.freeze({
  places: { noun: "place", fields: PLACE },
  enclosures: { noun: "enclosure or barrier", fields: ENCLOSURE },
  sections: { noun: "section of conductors", fields: SECTION },
  joints: { noun: "joint", fields: JOINT },
  supplementaryBonds: { noun: "supplementary bond", fields: SUPPLEMENTARY_BOND },
  electrodes: { noun: "electrode", fields: ELECTRODE },
  loads: { noun: "load", fields: LOAD },
  surgeDevices: { noun: "surge protective device", fields: SURGE_DEVICE },
  arcDevices: { noun: "arc fault detection device", fields: ARC_DEVICE },
} satisfies Record<string, { readonly noun: string; readonly fields: FieldSet }>);

export type ThingKind = keyof typeof THING_KINDS;

/** The kinds in the order of the file. */
export const THING_KIND_IDS = Object.freeze(Object.keys(THING_KINDS) as ThingKind[]);

/** What may be recorded of one kind of thing. */
export type FieldsOf<K extends ThingKind> = (typeof THING_KINDS)[K]["fields"];

export { OPENING };
