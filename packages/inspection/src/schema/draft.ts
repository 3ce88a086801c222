import * as z from "zod";
import { board } from "./board.ts";
import { brief } from "./brief.ts";
import { circuit } from "./circuit.ts";
import { extent } from "./extent.ts";
import { inspectionFile } from "./file.ts";
import { instrument } from "./instrument.ts";
import { observation } from "./observation.ts";
import { supply } from "./supply.ts";

/*
 * An unfinished file: what a finished one must have may be missing here, and is then not known. Only what holds other
 * things is loosened; a reading, a device or an answer is there as a whole or not at all.
 */

const { conditionalRating, rcds } = board.shape;
const { grouped } = circuit.shape.cable.unwrap().shape;
const { upstream } = conditionalRating.unwrap().shape;

const draftCircuit = circuit.partial({ designation: true, description: true }).extend({
  cable: circuit.shape.cable.unwrap().extend({ grouped: grouped.unwrap().partial().optional() }).optional(),
});

const draftBoard = board.partial({ name: true, fedFrom: true }).extend({
  circuits: z.array(draftCircuit).max(400).optional(),
  rcds: z
    .array(rcds.unwrap().element.partial({ id: true, serves: true }))
    .max(60)
    .optional(),
  conditionalRating: conditionalRating.unwrap().extend({ upstream: upstream.partial() }).partial().optional(),
});

const draftSupply = supply.extend({
  bonding: z
    .array(supply.shape.bonding.element.partial({ to: true }))
    .max(60)
    .optional(),
});

const draftBrief = brief.partial().extend({
  client: brief.shape.client.partial().optional(),
  premises: brief.shape.premises.partial().optional(),
});

export const draftFile = inspectionFile.partial().extend({
  brief: draftBrief.optional(),
  instruments: z
    .array(instrument.partial({ id: true, kind: true, serial: true }))
    .max(60)
    .optional(),
  extent: extent.partial().optional(),
  supply: draftSupply.optional(),
  boards: z.array(draftBoard).max(200).optional(),
  observations: z
    .array(observation.partial({ place: true, what: true }))
    .max(500)
    .optional(),
});

/** An inspection as far as it goes. A finished one is one of these. */
export type DraftFile = z.infer<typeof draftFile>;
