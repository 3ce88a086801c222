import { item } from "./item.ts";

/** Outdoors. */
export const OUTDOORS = [
  item(
    "outdoors.rcd",
    "outdoor-equipment",
    "Outdoor socket-outlets and mobile equipment behind a 30 mA RCD",
    "411.3.3",
  ),
  item("outdoors.weather", "outdoor-equipment", "Enclosures keep out weather; glands tight", "512.2", "522.3"),
  item("outdoors.buried", "buried-cable", "Buried cables deep enough, marked and protected", "522.8.10"),
  item(
    "outdoors.outbuildings",
    "outbuilding",
    "Outbuildings: earthing, isolation and feeding cable suited",
    "411",
    "462",
    "542",
  ),
] as const;
