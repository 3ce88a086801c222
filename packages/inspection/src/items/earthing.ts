import { item } from "./item.ts";

/** Earthing and bonding. */
export const EARTHING = [
  item("earthing.arrangement", "always", "Means of earthing present and as recorded", "312.3", "542.1"),
  item("earthing.conductor", "always", "Earthing conductor sound, connected and large enough", "542.3"),
  item("earthing.electrode", "earth-electrode", "Earth electrode and its connection sound", "542.2", "542.3.2"),
  item("earthing.main-terminal", "always", "Main earthing terminal accessible, connections tight", "542.4"),
  item(
    "earthing.main-bonding",
    "always",
    "Main bonding to extraneous parts present, connected and large enough",
    "411.3.1.2",
    "544.1",
  ),
  item(
    "earthing.bonding-connections",
    "always",
    "Bonding connections accessible, clean and labelled",
    "514.13.1",
    "543.3.2",
  ),
  item("earthing.supplementary", "always", "Supplementary bonding where needed, continuous", "415.2", "701.415.2"),
] as const;
