import { item } from "./item.ts";

/** Other sources of supply. */
export const SOURCES = [
  item("sources.generators", "generator", "Generators and their change-over arranged safely", "551"),
  item(
    "sources.photovoltaic",
    "photovoltaic",
    "Photovoltaic supply: isolation, protection and connection",
    "712",
    "551.7",
  ),
  item("sources.storage", "battery", "Batteries: place, isolation and protection", "551", "Part 8"),
  item("sources.vehicle-charging", "vehicle-charging", "Vehicle charging: earthing, RCD and isolation", "722"),
  item(
    "sources.direction",
    "other-source",
    "Devices suited to current in both directions where it can flow",
    "530.3.201",
  ),
] as const;
