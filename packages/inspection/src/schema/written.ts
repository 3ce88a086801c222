import { SCALES, UNIT_SYMBOL, type Unit } from "@good-grounds/core";
import * as z from "zod";
import { isAccuracy, isSigned, writtenFault } from "../acceptor/rules.ts";
import { OWN_RULES } from "./own-rules.ts";

/** Units as they may be written for a coherent unit, for messages: "Ω, mΩ, kΩ". */
function spellings(unit: Unit): string {
  const symbols = [...SCALES.values()].filter((scale) => scale.unit === unit).map((scale) => scale.symbol);
  return [...new Set(symbols)].filter((symbol) => symbol !== "").join(", ");
}

/** Number and space as a pattern. A magnitude has no sign; a temperature may have one. */
function form(signed: boolean, open: boolean): string {
  return String.raw`^${open ? "[<>]? ?" : ""}${signed ? "[+-]?" : String.raw`\+?`}\d{1,15}(\.\d{1,12})? ?`;
}

/**
 * A quantity as text with its unit, such as "2.5 mm²" or ">999 MΩ". Digits and unit are kept as written. `exact` refuses
 * a display at the end of its range, where an open end has no meaning.
 */
export function written(unit: Unit, meaning: string, exact = false) {
  const expected = `${meaning}, as a number with its unit (${spellings(unit) || "none"})`;
  const signed = isSigned(unit);
  return z
    .string({ error: `text with a number and its unit, such as "1.25 ${UNIT_SYMBOL[unit]}"` })
    .superRefine((text, context) => {
      const fault = writtenFault(text, unit, exact);
      if (fault === undefined) return;
      context.addIssue({ code: "custom", params: { fault, expected: adviceFor(unit) }, message: expected });
    })
    .meta({
      description: expected,
      pattern: form(signed, !exact),
      examples: [`1 ${UNIT_SYMBOL[unit]}`.trim()],
    })
    .register(OWN_RULES, { rule: "written", unit, exact });
}

function adviceFor(unit: Unit): string {
  const kind = unit === "celsius" ? "a decimal number" : "a decimal number, zero or more,";
  return `${kind} and one of the units ${spellings(unit) || "(no unit)"}, such as "1.25 ${UNIT_SYMBOL[unit]}"`;
}

/** An instrument's accuracy as its maker states it: "±(5 % + 3 digits)". */
export const accuracyText = z
  .string()
  .superRefine((text, context) => {
    if (!isAccuracy(text)) {
      const expected = 'an accuracy such as "±(5 % + 3 digits)" or "2 %"';
      context.addIssue({ code: "custom", params: { fault: "not-an-accuracy", expected }, message: expected });
    }
  })
  .meta({
    description: "Accuracy of one range of the instrument: part of the reading and digits of the last place",
    examples: ["±(5 % + 3 digits)", "2 %"],
  })
  .register(OWN_RULES, { rule: "accuracy" });
