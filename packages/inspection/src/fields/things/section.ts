import {
  CABLE_KINDS,
  CONDUCTOR_MATERIALS,
  COVERINGS,
  INSULATIONS,
  LENGTH_METHODS,
  REFERENCE_METHODS,
  SECTION_MATTER,
  SURROUNDINGS,
  TERM,
} from "@good-grounds/core";
import { quantityField, wordField, wordsField, yesNoField } from "../make.ts";
import { MATTER } from "../matters.ts";
import { COVERING_WORDS } from "./enclosure.ts";

/** A length of conductors of one make and route: from a board to the first joint, a spur, a drop. */
export const SECTION = Object.freeze({
  cable: wordField(MATTER.cableKind, CABLE_KINDS, { label: "Cable" }),
  insulation: wordField(MATTER.insulation, INSULATIONS, { label: "Insulation" }),
  material: wordField(MATTER.material, CONDUCTOR_MATERIALS, { label: "Conductors" }),
  line: quantityField(TERM.lineArea, { label: "Line" }),
  neutral: quantityField(TERM.neutralArea, { label: "Neutral" }),
  cpc: quantityField(TERM.cpcArea, { label: "cpc" }),
  length: quantityField(TERM.length, { label: "Length" }),
  lengthMethod: wordField(
    SECTION_MATTER.lengthMethod,
    LENGTH_METHODS,
    { label: "Length found" },
    { "by-drawing": "by drawing" },
  ),
  layer: wordField(SECTION_MATTER.layer, COVERINGS, { label: "Outermost layer" }, COVERING_WORDS),
  methods: wordsField(MATTER.method, REFERENCE_METHODS, { label: "Reference methods it may have" }),
  surroundings: wordsField(SECTION_MATTER.surroundings, SURROUNDINGS, { label: "Runs in" }),
  depth: quantityField(TERM.depthInWall, { label: "Depth in the wall", symbol: "mm" }),
  mechanical: yesNoField(SECTION_MATTER.mechanical, { label: "Protected where it can be struck" }),
});
