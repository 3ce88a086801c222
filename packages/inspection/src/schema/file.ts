import { ACCEPTANCE_RULES, EDITIONS } from "@good-grounds/core";
import * as z from "zod";
import { ITEM_IDS } from "../items/index.ts";
import { board } from "./board.ts";
import { brief, person, visit } from "./brief.ts";
import { day, id, line, paragraph, reading } from "./common.ts";
import { extent, limitation } from "./extent.ts";
import { instrument } from "./instrument.ts";
import { conclusion, observation, photograph, sha256, signature } from "./observation.ts";
import { earthingOff, precaution } from "./safety.ts";
import { supply } from "./supply.ts";
import { things } from "./things.ts";
import { FORMAT, VERSION } from "./version.ts";

/** An inspection: everything that was agreed, seen, measured, judged and signed on one job. */
export const inspectionFile = z
  .strictObject({
    format: z.literal(FORMAT),
    version: z.literal(VERSION),
    id,
    /** Set on examples: names and figures are made up, and every page says so. */
    invented: z.literal(true).optional(),
    title: line.optional(),
    edition: z.enum(EDITIONS),
    inspectedOn: day,
    brief,
    visits: z.array(visit).min(1).max(60),
    people: z.array(person).max(60),
    instruments: z.array(instrument).max(60),
    /** How uncertain readings are held against limits where probabilities are shown; simple where it is left out. */
    decisionRule: z.enum(ACCEPTANCE_RULES).optional(),
    conditions: z
      .strictObject({
        /** Conductor temperature during the dead tests, where the inspector states one for all circuits. */
        conductorTemperature: reading("celsius", "conductor temperature during the tests").optional(),
        note: paragraph.optional(),
      })
      .optional(),
    /** Steps taken for safety on site. */
    precautions: z.array(precaution).max(200).optional(),
    /** Times during which the earthing conductor was disconnected. */
    earthingOff: z.array(earthingOff).max(60).optional(),
    extent,
    limitations: z.array(limitation).max(200),
    supply,
    boards: z.array(board).min(1).max(200),
    things: things.optional(),
    inspected: z
      .array(
        z.strictObject({
          item: z.enum(ITEM_IDS),
          outcome: z.enum(["in-order", "observed", "limited", "not-verified", "not-applicable"]),
          observations: z.array(id).max(40).optional(),
          reason: line.optional(),
        }),
      )
      .max(400),
    observations: z.array(observation).max(500),
    /** The firm's folder of topics and standing views with which the observations were judged; none where it is left out. */
    topics: z
      .strictObject({ name: line, answersFor: line, hash: sha256 })
      .optional()
      .meta({ description: "The firm's folder of topics the observations were judged with, by the hash of its texts" }),
    /** Positions the firm takes on contested points wherever an observation does not state its own. */
    standingViews: z
      .array(z.strictObject({ topic: id, point: id, position: id, reason: line }))
      .max(200)
      .optional(),
    photographs: z.array(photograph).max(2000),
    /** What the inspector wrote to a check of their own figures, by the check's id. For them alone: no report carries it. */
    ownFigures: z
      .array(z.strictObject({ check: id, note: paragraph }))
      .max(200)
      .optional()
      .meta({ description: "Notes to checks of one's own figures, by the id of the check; no report carries them" }),
    conclusion: conclusion.optional(),
    signatures: z.array(signature).max(20),
  })
  .meta({ title: "Good Grounds inspection file" });

/** The document as stored: plain JSON data. */
export type InspectionFile = z.infer<typeof inspectionFile>;
