import * as z from "zod";
import { ELECTRODE } from "../fields/things/electrode.ts";
import { ENCLOSURE, OPENING } from "../fields/things/enclosure.ts";
import { JOINT } from "../fields/things/joint.ts";
import { LOAD } from "../fields/things/load.ts";
import { PLACE } from "../fields/things/place.ts";
import { ARC_DEVICE, SURGE_DEVICE } from "../fields/things/protective.ts";
import { SECTION } from "../fields/things/section.ts";
import { SUPPLEMENTARY_BOND } from "../fields/things/supplementary-bond.ts";
import { id, line, paragraph } from "./common.ts";
import { shapeOf } from "./field-schema.ts";

/**
 * What every thing has: an id that no other thing of the file has, and where it is. Without a board it is at the origin or
 * belongs to the whole. `quantity` is how many of them are alike.
 */
const common = {
  id,
  board: id.optional(),
  circuit: id.optional(),
  place: id.optional(),
  name: line.optional(),
  quantity: z.int().min(1).max(10_000).optional(),
};

const note = { note: paragraph.optional() };

const place = z.strictObject({ ...common, ...shapeOf(PLACE), ...note });

const enclosure = z.strictObject({
  ...common,
  ...shapeOf(ENCLOSURE),
  openings: z
    .array(z.strictObject(shapeOf(OPENING)))
    .max(60)
    .optional(),
  ...note,
});

const section = z.strictObject({ ...common, from: line.optional(), to: line.optional(), ...shapeOf(SECTION), ...note });

/** A joint lies between sections and within an enclosure, each by its id. */
const joint = z.strictObject({
  ...common,
  between: z.array(id).max(20).optional(),
  enclosure: id.optional(),
  ...shapeOf(JOINT),
  ...note,
});

const supplementaryBond = z.strictObject({
  ...common,
  from: line.optional(),
  to: line.optional(),
  ...shapeOf(SUPPLEMENTARY_BOND),
  ...note,
});

const electrode = z.strictObject({ ...common, ...shapeOf(ELECTRODE), ...note });
const load = z.strictObject({ ...common, ...shapeOf(LOAD), ...note });

/** A surge protective device serves its whole board; an arc fault detection device the circuits it names, or its own. */
const surgeDevice = z.strictObject({ ...common, ...shapeOf(SURGE_DEVICE), ...note });
const arcDevice = z.strictObject({
  ...common,
  feeds: z.array(id).max(60).optional(),
  ...shapeOf(ARC_DEVICE),
  ...note,
});

const MOST = 2000;

/** Things one by one, as far as anybody listed them; nobody has to list all. */
export const things = z.strictObject({
  places: z.array(place).max(MOST).optional(),
  enclosures: z.array(enclosure).max(MOST).optional(),
  sections: z.array(section).max(MOST).optional(),
  joints: z.array(joint).max(MOST).optional(),
  supplementaryBonds: z.array(supplementaryBond).max(MOST).optional(),
  electrodes: z.array(electrode).max(MOST).optional(),
  loads: z.array(load).max(MOST).optional(),
  surgeDevices: z.array(surgeDevice).max(MOST).optional(),
  arcDevices: z.array(arcDevice).max(MOST).optional(),
});

export type ThingLists = z.infer<typeof things>;
