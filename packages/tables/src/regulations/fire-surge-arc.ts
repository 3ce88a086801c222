import { regulationsOf } from "./regulation.ts";

/** Fire, surges and arcs. */
export const FIRE_SURGE_ARC = regulationsOf("fire-surge-arc", [
  [
    "421.1.201",
    "published",
    "In dwellings a consumer unit is made of, or stands in an enclosure of, material that does not burn (from 1 January 2016).",
  ],
  [
    "421.1.7",
    "published",
    "Arc fault detection for single-phase final circuits with socket-outlets up to 32 A in higher-risk residential buildings, houses in multiple occupation, student accommodation and care homes; advised elsewhere.",
    { doubt: "whether amendment 4 changed it is not known" },
  ],
  [
    "443.4.1",
    "published",
    "Surge protection where a surge could injure or kill, stop a safety service or cost much money or data; elsewhere unless the owner declares the risk bearable.",
  ],
  ["521.10.202", "published", "Cables, data cables too, are held so that they do not come down early in a fire."],
]);
