import { parseAccuracy, parseWritten, type Unit } from "@good-grounds/core";

/** Temperatures alone may lie below nought. */
export function isSigned(unit: Unit): boolean {
  return unit === "celsius";
}

/** What is wrong with a text as a quantity; undefined where nothing is. `exact` refuses a display at the end of its range. */
export function writtenFault(text: string, unit: Unit, exact: boolean): string | undefined {
  const result = parseWritten(text, unit);
  if ("code" in result) return result.code;
  if (!isSigned(unit) && result.value < 0) return "negative";
  return exact && result.bound !== "exact" ? "open-limit" : undefined;
}

export function isAccuracy(text: string): boolean {
  return parseAccuracy(text) !== undefined;
}
