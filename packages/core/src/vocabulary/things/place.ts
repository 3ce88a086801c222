import { matter } from "../../terms/term.ts";

/** Kinds of place that a thing can be in. */
export const PLACE_KINDS = [
  "room",
  "hall-or-stair",
  "cupboard",
  "plant-room",
  "roof-space",
  "under-floor",
  "outbuilding",
  "outdoors",
  "public-area",
  "other",
] as const;
export type PlaceKind = (typeof PLACE_KINDS)[number];

/** Who comes to a place or can open what is there, best first. `children`: they or people less able to see a danger. */
export const COMERS = ["skilled", "keeper", "many-keys", "anyone", "children"] as const;
export type Comer = (typeof COMERS)[number];

/** How wet a place is, best first. */
export const WETNESSES = ["dry", "damp", "wet"] as const;
export type Wetness = (typeof WETNESSES)[number];

/** Locations for which Part 7 of BS 7671 asks more; `none` is a place of the ordinary kind. */
export const SPECIAL_LOCATIONS = [
  "none",
  "bath-or-shower",
  "pool",
  "sauna",
  "building-site",
  "farm",
  "conducting-place",
  "caravan-site",
  "marina",
  "medical",
  "exhibition",
  "mobile-unit",
  "vehicle-charging",
  "fairground",
  "floor-or-ceiling-heating",
  "other",
] as const;
export type SpecialLocation = (typeof SPECIAL_LOCATIONS)[number];

/** What is asked about a place. */
export const PLACE_MATTER = Object.freeze({
  kind: matter("place-kind", "kind of place"),
  comers: matter("place-comers", "who comes to the place"),
  wetness: matter("place-wetness", "how wet the place is"),
  conducting: matter("place-conducting", "earthed metal or conducting floor within touch"),
  special: matter("place-special", "special location"),
});
