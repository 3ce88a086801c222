import { item } from "./item.ts";

/** Accessories and equipment. */
export const ACCESSORIES = [
  item("accessories.condition", "always", "Accessories whole and fixed", "134.1.1", "416.2"),
  item("accessories.connections", "always", "Connections tight, conductors undamaged", "526.1"),
  item("accessories.single-pole-switches", "always", "Single-pole switches in line conductors only", "530.3.3"),
  item(
    "accessories.external-influences",
    "always",
    "Equipment suits its surroundings: water, dust, heat, knocks",
    "512.2",
  ),
  item(
    "accessories.isolation",
    "always",
    "Local isolation and switching off for maintenance provided",
    "462.2",
    "464",
    "465",
  ),
  item("accessories.emergency", "always", "Emergency switching off where needed", "465", "537.3.3"),
  item("accessories.luminaires", "always", "Luminaires fixed, with room from what can burn", "422.3", "559.4", "559.5"),
  item("accessories.fixed-equipment", "always", "Fixed equipment secure and rightly protected", "134.1.1", "512.2"),
] as const;
