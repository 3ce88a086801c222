import type { Quantity } from "./quantity.ts";
import { SCALES, type Unit } from "./unit.ts";

/** Where the true value lies relative to what a display showed: `above` is a display such as ">999 MΩ". */
export type Bound = "exact" | "above" | "below";

/** A value as somebody wrote it or an instrument showed it. Nothing of the text is lost: `text` prints it back. */
export interface Written<U extends Unit> {
  readonly text: string;
  readonly value: Quantity<U>;
  /** One unit of the last digit shown, in the coherent unit: 0.01 for "0.35 Ω", 1e6 for "200 MΩ". */
  readonly resolution: Quantity<U>;
  readonly bound: Bound;
}

/** Why a text is not a written quantity. Words are made elsewhere. */
export type WrittenFault =
  | { readonly code: "not-a-quantity"; readonly found: string; readonly expected: Unit }
  | { readonly code: "unknown-unit"; readonly found: string; readonly expected: Unit }
  | { readonly code: "unit-mismatch"; readonly found: string; readonly expected: Unit; readonly foundUnit: Unit }
  | { readonly code: "out-of-range"; readonly found: string; readonly expected: Unit };

const FORM = /^([<>])? ?([+-]?\d{1,15}(?:\.\d{1,12})?) ?([^\d\s.,<>+-][^\s]{0,9})?$/u;
const LONGEST = 40;

/**
 * Values as they were read, by their unit and text. A job writes few different ones many times over, they are looked at when
 * a file is checked and again when it is judged, and none of them ever changes.
 */
const READ = new Map<Unit, Map<string, Written<Unit>>>();
/** Texts kept for a unit; beyond them it is begun anew, so that no stream of files fills the memory. */
const MOST_KEPT = 4000;

/**
 * Reads a value with its unit, such as "0.35 Ω", "30.3 ms", ">999 MΩ" or "2.5 mm²". Decimal digits become the nearest
 * double of the decimal as written (the power of ten of the unit is applied to the text, not to a rounded number).
 * A ratio may be written without a unit or in percent. Decimal commas, exponents and missing units are faults.
 */
export function parseWritten<U extends Unit>(text: string, expected: U): Written<U> | WrittenFault {
  const known = READ.get(expected)?.get(text);
  if (known !== undefined) return known as Written<U>;
  const read = readWritten(text, expected);
  if (!isFault(read)) {
    const kept = READ.get(expected);
    if (kept === undefined || kept.size >= MOST_KEPT) READ.set(expected, new Map([[text, read]]));
    else kept.set(text, read);
  }
  return read;
}

function readWritten<U extends Unit>(text: string, expected: U): Written<U> | WrittenFault {
  const found = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  const parts = text.length > LONGEST ? null : FORM.exec(text.trim());
  if (parts === null) return { code: "not-a-quantity", found, expected };
  const [, sign, digits = "", symbol = ""] = parts;
  const scale = SCALES.get(symbol);
  if (scale === undefined) return { code: "unknown-unit", found, expected };
  if (scale.unit !== expected) {
    return symbol === ""
      ? { code: "unknown-unit", found, expected }
      : { code: "unit-mismatch", found, expected, foundUnit: scale.unit };
  }
  const value = Number(`${digits}e${scale.exponent}`);
  if (!Number.isFinite(value)) return { code: "out-of-range", found, expected };
  const point = digits.indexOf(".");
  const decimals = point < 0 ? 0 : digits.length - point - 1;
  const resolution = Number(`1e${scale.exponent - decimals}`);
  const bound: Bound = sign === ">" ? "above" : sign === "<" ? "below" : "exact";
  return Object.freeze({ text, value: value as Quantity<U>, resolution: resolution as Quantity<U>, bound });
}

/** Tells a fault from a value. */
export function isFault<U extends Unit>(result: Written<U> | WrittenFault): result is WrittenFault {
  return "code" in result;
}
