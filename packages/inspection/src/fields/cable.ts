import { CABLE_KINDS, CONDUCTOR_MATERIALS, CPC_ARRANGEMENTS, INSULATIONS, TERM } from "@good-grounds/core";
import { LENGTH_FOUND_FIELD } from "./length-found.ts";
import { quantityField, wordField } from "./make.ts";
import { MATTER } from "./matters.ts";

/** What a cable is made of. */
export const CABLE_MAKE = Object.freeze({
  kind: wordField(MATTER.cableKind, CABLE_KINDS, { label: "Cable" }),
  insulation: wordField(MATTER.insulation, INSULATIONS, { label: "Insulation" }),
  material: wordField(MATTER.material, CONDUCTOR_MATERIALS, { label: "Conductors" }),
  line: quantityField(TERM.lineArea, { label: "Line", meaning: "size of the line conductor" }),
  neutral: quantityField(TERM.neutralArea, { label: "Neutral", meaning: "size of the neutral conductor" }),
  cpc: quantityField(TERM.cpcArea, { label: "cpc", meaning: "size of the protective conductor" }),
  cpcArrangement: wordField(MATTER.cpcArrangement, CPC_ARRANGEMENTS, { label: "cpc is" }),
});

/** Where it runs. */
export const CABLE_RUN = Object.freeze({
  length: quantityField(TERM.length, { label: "Length", meaning: "length of the cable" }),
  lengthFound: LENGTH_FOUND_FIELD,
  ambient: quantityField(TERM.ambientTemperature, {
    label: "Ambient temperature",
    meaning: "ambient temperature along the route",
  }),
});

/** Thermal insulation that the reference method does not already cover. */
export const CABLE_SURROUNDED = Object.freeze({
  surroundedByInsulation: quantityField(TERM.length, {
    label: "Within thermal insulation",
    meaning: "length surrounded by thermal insulation",
  }),
});
