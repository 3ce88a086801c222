import { ACCESSORIES } from "./accessories.ts";
import { BATHROOMS } from "./bathrooms.ts";
import { BOARDS } from "./boards.ts";
import { CIRCUITS } from "./circuits.ts";
import { EARTHING } from "./earthing.ts";
import { INTAKE } from "./intake.ts";
import type { InspectionItem } from "./item.ts";
import { NOTICES } from "./notices.ts";
import { OUTDOORS } from "./outdoors.ts";
import { SOURCES } from "./sources.ts";

export type { InspectionItem } from "./item.ts";

/** The items in the order an inspector meets them, by group. */
export const ITEM_GROUPS = Object.freeze([
  { title: "Intake and distributor's equipment", items: INTAKE },
  { title: "Earthing and bonding", items: EARTHING },
  { title: "Boards", items: BOARDS },
  { title: "Circuits", items: CIRCUITS },
  { title: "Accessories and equipment", items: ACCESSORIES },
  { title: "Rooms with a bath or shower", items: BATHROOMS },
  { title: "Outdoors and other special places", items: OUTDOORS },
  { title: "Other sources of supply", items: SOURCES },
  { title: "Notices and identification", items: NOTICES },
] as const);

/** Identifier of an item. */
export type ItemId = (typeof ITEM_GROUPS)[number]["items"][number]["id"];

/** Identifiers of all items, for the schema. */
export const ITEM_IDS = ITEM_GROUPS.flatMap((group): readonly InspectionItem[] => group.items).map((one) => one.id) as [
  ItemId,
  ...ItemId[],
];
