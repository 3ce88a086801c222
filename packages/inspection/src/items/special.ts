import { item } from "./item.ts";

/** Special places, each with its section of Part 7. Rooms with a bath or shower are a group of their own. */
export const SPECIAL = [
  item("special.pools", "pool", "Pools and fountains: equipment kept to its zones, earthing and bonding", "702"),
  item("special.farms", "farm", "Farms: RCDs, bonding where livestock stand, protection from damage and fire", "705"),
  item(
    "special.conducting-places",
    "conducting-place",
    "Narrow conducting places: supply of hand-held equipment",
    "706",
  ),
  item("special.medical", "medical-place", "Medical places: supply, bonding and change-over suit the treatment", "710"),
  item("special.caravans-boats", "caravan-or-boat", "Pitches and moorings: outlets, RCDs and earthing", "708", "709"),
  item(
    "special.locations",
    "other-special-place",
    "Other special places inspected against their section of Part 7",
    "Part 7",
  ),
] as const;
