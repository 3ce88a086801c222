import { BOND_MATTER, CONDUCTOR_MATERIALS, CONNECTION_STATES, TERM } from "@good-grounds/core";
import { quantityField, readingField, wordField, yesNoField } from "../make.ts";
import { MATTER } from "../matters.ts";

/** Supplementary bonding between two parts that can be touched together. */
export const SUPPLEMENTARY_BOND = Object.freeze({
  connected: yesNoField(BOND_MATTER.joined, { label: "Connected" }),
  size: quantityField(TERM.bondArea, { label: "Size" }),
  material: wordField(MATTER.material, CONDUCTOR_MATERIALS, { label: "Material" }),
  condition: wordField(
    BOND_MATTER.state,
    CONNECTION_STATES,
    { label: "Condition" },
    { browned: "browned or stiff from heat" },
  ),
  resistance: readingField(TERM.betweenParts, "continuity", { label: "Resistance between the parts" }),
});
