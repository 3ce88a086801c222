import { ACCESSORIES } from "./accessories.ts";
import { BATHROOMS } from "./bathrooms.ts";
import { BOARDS } from "./boards.ts";
import { CIRCUITS } from "./circuits.ts";
import { EARTHING } from "./earthing.ts";
import { FIRE } from "./fire.ts";
import { INTAKE } from "./intake.ts";
import type { InspectionItem } from "./item.ts";
import { NOTICES } from "./notices.ts";
import { OUTDOORS } from "./outdoors.ts";
import { SOURCES } from "./sources.ts";
import { SPECIAL } from "./special.ts";

export { CIRCUMSTANCES, type Circumstance, type InspectionItem, ITEM_GROUP_IDS, type ItemGroupId } from "./item.ts";

/** The items in the order an inspector meets them, by group. */
export const ITEM_GROUPS = Object.freeze([
  { id: "intake", title: "Intake and distributor's equipment", items: INTAKE },
  { id: "earthing", title: "Earthing and bonding", items: EARTHING },
  { id: "boards", title: "Boards", items: BOARDS },
  { id: "circuits", title: "Circuits", items: CIRCUITS },
  { id: "accessories", title: "Accessories and equipment", items: ACCESSORIES },
  { id: "fire", title: "Fire", items: FIRE },
  { id: "bathrooms", title: "Rooms with a bath or shower", items: BATHROOMS },
  { id: "outdoors", title: "Outdoors", items: OUTDOORS },
  { id: "special", title: "Other special places", items: SPECIAL },
  { id: "sources", title: "Other sources of supply", items: SOURCES },
  { id: "notices", title: "Notices and identification", items: NOTICES },
] as const);

/** Identifier of an item. */
export type ItemId = (typeof ITEM_GROUPS)[number]["items"][number]["id"];

/** An item whose id is one of those this program knows. */
export type KnownItem = InspectionItem & { readonly id: ItemId };

/** Every item, group by group. */
export const ITEMS: readonly KnownItem[] = Object.freeze(
  ITEM_GROUPS.flatMap((group): readonly KnownItem[] => group.items),
);

/** Identifiers of all items, for the schema. */
export const ITEM_IDS = Object.freeze(ITEMS.map(({ id }) => id)) as readonly [ItemId, ...ItemId[]];

const BY_ID: ReadonlyMap<string, KnownItem> = new Map(ITEMS.map((one) => [one.id, one]));

/** The item of this id; undefined where there is none. */
export function itemById(id: string): KnownItem | undefined {
  return BY_ID.get(id);
}
