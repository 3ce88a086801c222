import { item } from "./item.ts";

/** Rooms with a bath or shower. */
export const BATHROOMS = [
  item("bathrooms.rcd", "bath-or-shower", "All circuits of the room behind a 30 mA RCD", "701.411.3.3"),
  item(
    "bathrooms.bonding",
    "bath-or-shower",
    "Supplementary bonding present, or the conditions to leave it out met",
    "701.415.2",
  ),
  item("bathrooms.ip", "bath-or-shower", "Equipment protected against water as its zone asks", "701.512.2"),
  item(
    "bathrooms.equipment",
    "bath-or-shower",
    "Switchgear and equipment allowed in their zones",
    "701.512.3",
    "701.55",
  ),
] as const;
