import { COMERS, PLACE_KINDS, PLACE_MATTER, SPECIAL_LOCATIONS, WETNESSES } from "@good-grounds/core";
import { wordField, wordsField, yesNoField } from "../make.ts";

/** A room or another place that things stand in. */
export const PLACE = Object.freeze({
  kind: wordField(PLACE_MATTER.kind, PLACE_KINDS, { label: "Kind of place" }),
  comers: wordField(
    PLACE_MATTER.comers,
    COMERS,
    { label: "Who comes here" },
    {
      skilled: "skilled persons only",
      keeper: "a named keeper",
      "many-keys": "everybody with one of many keys",
      children: "children, or people less able",
    },
  ),
  wetness: wordField(PLACE_MATTER.wetness, WETNESSES, { label: "Dry or wet" }),
  conducting: yesNoField(PLACE_MATTER.conducting, { label: "Earthed metal or conducting floor within touch" }),
  special: wordsField(PLACE_MATTER.special, SPECIAL_LOCATIONS, { label: "Special location" }),
});
