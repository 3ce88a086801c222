/** Groups of items, in the order an inspector meets them. An item's id starts with the group it belongs to. */
export const ITEM_GROUP_IDS = [
  "intake",
  "earthing",
  "boards",
  "circuits",
  "accessories",
  "fire",
  "bathrooms",
  "outdoors",
  "special",
  "sources",
  "notices",
] as const;
export type ItemGroupId = (typeof ITEM_GROUP_IDS)[number];

/**
 * What has to be there for an item to arise; "always" arises everywhere. An item whose circumstance is absent is still
 * answered, as not applicable: leaving it out would look like an item nobody looked at.
 */
export const CIRCUMSTANCES = [
  "always",
  "dwelling",
  "earth-electrode",
  "bath-or-shower",
  "outdoor-equipment",
  "buried-cable",
  "outbuilding",
  "escape-route",
  "combustible-contents",
  "combustible-construction",
  "fire-alarm",
  "pool",
  "farm",
  "conducting-place",
  "medical-place",
  "caravan-or-boat",
  "other-special-place",
  "generator",
  "photovoltaic",
  "battery",
  "vehicle-charging",
  "other-source",
] as const;
export type Circumstance = (typeof CIRCUMSTANCES)[number];

/** One thing an inspection has to look at and answer. */
export interface InspectionItem {
  /** Stable id: group and name, "intake.cut-out". */
  readonly id: string;
  readonly group: ItemGroupId;
  /** What is asked, in the words of this project. */
  readonly asks: string;
  /** Regulations of BS 7671 it bears on. */
  readonly regulations: readonly string[];
  /** What has to be there for the item to arise. */
  readonly applies: Circumstance;
}

export function item<const I extends `${ItemGroupId}.${string}`>(
  id: I,
  applies: Circumstance,
  asks: string,
  ...regulations: readonly string[]
) {
  const group = id.slice(0, id.indexOf(".")) as ItemGroupId;
  return Object.freeze({ id, group, asks, regulations: Object.freeze(regulations), applies }) satisfies InspectionItem;
}
