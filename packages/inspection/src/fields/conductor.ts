import { CONDUCTOR_MATERIALS, TERM } from "@good-grounds/core";
import { LENGTH_FOUND_FIELD } from "./length-found.ts";
import { quantityField, wordField } from "./make.ts";
import { MATTER } from "./matters.ts";

type Area = (typeof TERM)["area" | "tailsArea" | "neutralArea" | "earthingArea" | "bondArea"];

/** A conductor with a size, a material and a length: tails, the supply neutral, the earthing conductor, a bond. */
export function conductorFields(area: Area) {
  return Object.freeze({
    size: quantityField(area, { label: "Size", meaning: "cross-sectional area" }),
    material: wordField(MATTER.material, CONDUCTOR_MATERIALS, { label: "Material" }),
    length: quantityField(TERM.length, { label: "Length", meaning: "length" }),
    lengthFound: LENGTH_FOUND_FIELD,
  });
}

export const TAILS = conductorFields(TERM.tailsArea);
export const SUPPLY_NEUTRAL = conductorFields(TERM.neutralArea);
export const EARTHING_CONDUCTOR = conductorFields(TERM.earthingArea);
export const BOND_CONDUCTOR = conductorFields(TERM.bondArea);
