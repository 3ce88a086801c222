import { CIRCUIT_LOADS, DEVICE_MATTER, TERM } from "@good-grounds/core";
import { quantityField, wordField, yesNoField } from "../make.ts";

/** Something that is supplied. */
export const LOAD = Object.freeze({
  kind: wordField(DEVICE_MATTER.loadKind, CIRCUIT_LOADS, { label: "What it is" }),
  power: quantityField(TERM.ratedPower, { label: "Rated power", symbol: "kW" }),
  fixed: yesNoField(DEVICE_MATTER.loadFixed, { label: "Fixed" }),
});
