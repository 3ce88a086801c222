import { parseWritten, SCALES, type Unit } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";

export type FactValue = NonNullable<InspectionFile["observations"][number]["facts"]>[string];

const UNITS: readonly Unit[] = [...new Set([...SCALES.values()].map(({ unit }) => unit))];

/** Lengths in centimetres: no reading is given in them, but a thing seen may be. */
const CENTIMETRES = /^([<>])? ?([+-]?\d{1,15}(?:\.\d{1,12})?) ?cm$/;

/**
 * What a fact says, as text that is the same exactly where two facts say the same. Quantities go by value and unit,
 * however written ("17.5 mm", "1.75 cm", "0.0175 m"); ranges by their ends; "a | b" in any order; words without regard to
 * spacing and letter case. What is not known is not known whatever the reason: neither a no nor a fact left unrecorded.
 */
export function factKey(value: FactValue): string {
  if (typeof value === "boolean") return yesOrNo(value);
  if (typeof value === "object") return value.notKnown === "not-applicable" ? "does-not-apply" : "not-known";
  const states = new Set(value.split("|").map((one) => rangeKey(one) ?? quantityKey(one) ?? wordKey(one)));
  return [...states].sort().join(" | ");
}

function yesOrNo(value: boolean): string {
  return value ? "yes" : "no";
}

function rangeKey(text: string): string | undefined {
  const [from, to, more] = text.split(/ to |\.\./);
  if (from === undefined || to === undefined || more !== undefined) return undefined;
  const keys = [quantityKey(from), quantityKey(to)];
  return keys.includes(undefined) ? undefined : keys.join(" to ");
}

function quantityKey(text: string): string | undefined {
  const plain = text.normalize("NFC").trim();
  const [, sign, digits] = CENTIMETRES.exec(plain) ?? [];
  if (digits !== undefined)
    return quantity("metre", sign === ">" ? "above" : sign === "<" ? "below" : "exact", Number(`${digits}e-2`));
  for (const unit of UNITS) {
    const read = parseWritten(plain, unit);
    if (!("code" in read)) return quantity(unit, read.bound, read.value);
  }
  return undefined;
}

function quantity(unit: Unit, bound: string, value: number): string {
  return `${unit} ${bound} ${value}`;
}

/** Spacing and letter case evened. A text with digits keeps its case: 5 mW and 5 MW are not the same. */
function wordKey(text: string): string {
  const spaced = text.normalize("NFC").replaceAll(/\s+/gu, " ").trim();
  const word = /\p{N}/u.test(spaced) ? spaced : foldCase(spaced);
  return word === "yes" || word === "no" ? word : `word ${word}`;
}

/** Letter case evened so that ß and SS, or the two small sigmas, are alike. */
export function foldCase(text: string): string {
  return text.toUpperCase().toLowerCase();
}
