import { MISFIT_KINDS, UNIT_SYMBOL, type Unit } from "@good-grounds/core";
import * as z from "zod";
import { written } from "./written.ts";

/** Identifier inside one file: short, no spaces, so that it can stand in a path and on a label. */
export const id = z
  .string()
  .regex(
    /^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/,
    "up to 40 letters, digits, dots, underscores and hyphens, starting with a letter or digit",
  )
  .meta({ description: "Identifier, unique among its kind: letters, digits, dot, underscore, hyphen" });

/** A line of text. Control characters and halves of characters have no place in a report and are refused. */
export const line = z
  .string()
  .min(1)
  .max(300)
  .regex(/^[^\p{Cc}\p{Cs}]*$/u, "one line of text without control characters");

/** A paragraph of text; line breaks are allowed. */
export const paragraph = z
  .string()
  .min(1)
  .max(4000)
  .regex(/^(?:[^\p{Cc}\p{Cs}]|[\n\t])*$/u, "text without control characters other than line breaks and tabs");

export const day = z.iso
  .date('a calendar date such as "2026-10-20"')
  .meta({ description: "Calendar date, YYYY-MM-DD" });
export const moment = z.iso
  .datetime({ offset: true, error: 'a date and time with its offset, such as "2026-10-20T10:45:00+01:00"' })
  .meta({ description: "Date and time with offset from UTC" });

/** Why something has no value although it was asked for. */
const silence = z.enum(["limited", "not-verified", "not-applicable"]);

/** The statement that something asked for has no value, and why. */
export const notKnown = z.strictObject(
  { notKnown: silence, reason: line },
  { error: 'an object that says why it is not known, such as {"notKnown": "limited", "reason": "locked"}' },
);

/** A fact, or the statement that it is not known and why. Leaving the member out means that nothing was recorded. */
export function stated<T extends z.ZodType>(schema: T) {
  return z.union([schema, notKnown]);
}

const RANGE = 'a range with "from" and "to"';

/** A quantity stated or seen: one value, a range when only its limits are known, or not known with the reason. */
export function statedQuantity(unit: Unit, meaning: string) {
  const one = written(unit, meaning);
  const limit = written(unit, meaning, true);
  return z.union([one, z.strictObject({ from: limit, to: limit }, { error: RANGE }), notKnown]);
}

/** A reading as the display showed it, with when, by whom, with what and how; or why it was not taken. */
export function reading(unit: Unit, meaning: string) {
  return z.union([
    z.strictObject(
      {
        shown: written(unit, meaning),
        at: moment.optional(),
        by: id.optional(),
        with: id.optional(),
        method: line.optional(),
        note: line.optional(),
      },
      { error: `an object with what the display showed, such as {"shown": "1.25 ${UNIT_SYMBOL[unit]}"}` },
    ),
    z.strictObject(
      { notTaken: silence, reason: line },
      { error: 'one that says why it was not taken, such as {"notTaken": "limited", "reason": "locked"}' },
    ),
  ]);
}

/**
 * Readings of a place that do not agree and that the inspector chooses to show in the report, by what they are about.
 * None is shown otherwise: what they may mean is for the inspector first.
 */
export const sharedMisfits = z
  .array(z.strictObject({ kind: z.enum(MISFIT_KINDS), note: paragraph.optional() }))
  .max(20)
  .optional();
