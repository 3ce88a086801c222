import { item } from "./item.ts";

/** Outdoors and other special places. */
export const OUTDOORS = [
  item("outdoors.rcd", "Outdoor socket-outlets and mobile equipment behind a 30 mA RCD", "411.3.3"),
  item("outdoors.weather", "Enclosures keep out weather; glands tight", "512.2", "522.3"),
  item("outdoors.buried", "Buried cables deep enough, marked and protected", "522.8.10"),
  item("outdoors.outbuildings", "Outbuildings: earthing, isolation and feeding cable suited", "411", "462", "542"),
  item("special.locations", "Other special locations inspected against their section of Part 7", "Part 7"),
] as const;
