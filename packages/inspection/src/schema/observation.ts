import { CLASSIFICATIONS } from "@good-grounds/core";
import * as z from "zod";
import { day, id, line, moment, notKnown, paragraph } from "./common.ts";
import { things } from "./things.ts";

export const sha256 = z.string().regex(/^[0-9a-f]{64}$/, "a SHA-256 as 64 digits 0 to 9 and a to f");

/** One thing seen or measured that is worth a line, with the inspector's own choice of classification. */
export const observation = z.strictObject({
  id,
  board: id.optional(),
  circuit: id.optional(),
  place: line,
  /**
   * The things it speaks of, by id: one of the file's things, a bonding conductor, or an RCD of the board named here or of
   * the observation's own. `quantity`: how many of those that are alike.
   */
  things: z
    .array(z.strictObject({ thing: id, board: id.optional(), quantity: z.int().min(1).max(10_000).optional() }))
    .max(100)
    .optional(),
  /** Things that no schedule lists and that this observation brings in: a cupboard, a lid. */
  brings: things.optional(),
  what: paragraph,
  /** The subject of the observation, which decides what facts are asked for. */
  topic: id.optional(),
  /** Facts that bear on it, by name: yes or no, a word, a quantity with its unit, or why it is not known. */
  facts: z.record(id, z.union([z.boolean(), line, notKnown])).optional(),
  /** The inspector's position on a contested point of the topic, by the point's name. */
  positions: z.record(id, z.strictObject({ position: id, reason: paragraph.optional() })).optional(),
  /**
   * Checks that are not met and of which this observation speaks, by the check's id; readings that do not agree, by their
   * kind; parts found defective in a sample, as "defective-sample". At its own place, or at the board and the circuit named. `part` names one bonding conductor or one RCD of the board by its id.
   */
  answers: z
    .array(z.strictObject({ check: id, board: id.optional(), circuit: id.optional(), part: id.optional() }))
    .max(100)
    .optional(),
  regulations: z.array(line).max(10).optional(),
  photographs: z.array(sha256).max(40).optional(),
  choice: z
    .strictObject({ classification: z.enum(CLASSIFICATIONS), reason: paragraph, by: id, at: moment.optional() })
    .optional(),
  remedy: paragraph.optional(),
  /** What was done about danger before leaving, who was told and what they said. */
  madeSafe: z.strictObject({ done: paragraph, told: line, at: moment, reply: line.optional() }).optional(),
  /** The day on which it was found, where the inspection took several; the first of them where it is left out. */
  foundOn: day.optional(),
  /** Why nobody could be told of danger before leaving. */
  untold: paragraph.optional(),
});

/** A photograph, found by the hash of its bytes. */
export const photograph = z.strictObject({
  sha256,
  name: line,
  description: line,
  place: line.optional(),
  taken: moment.optional(),
});

/** What the inspector concludes; the derived outcome stands beside it and never replaces it. */
export const conclusion = z.strictObject({
  outcome: z.enum(["satisfactory", "unsatisfactory"]).optional(),
  generalCondition: paragraph.optional(),
  /** A period the report sets for remedial or investigative work, in days with the day of the inspection as the first. */
  workWithin: z.strictObject({ days: z.int().min(1).max(365), reason: paragraph.optional() }).optional(),
  nextInspection: z.strictObject({ by: day, reason: paragraph }).optional(),
});

export const signature = z.strictObject({
  person: id,
  capacity: z.enum(["inspected-and-tested", "authorised-for-issue"]),
  at: moment,
  /** SHA-256 of what was signed: the printed inspection without its signatures. A later change no longer matches it. */
  content: sha256.optional(),
  /** The drawn signature as the data of an SVG path in a field of 320 by 110. */
  drawn: z
    .string()
    .max(4000)
    .regex(/^[ML0-9. -]*$/, "an SVG path of straight strokes")
    .optional(),
});
