import { CONDUCTOR_MATERIALS } from "@good-grounds/core";
import { ofCable } from "../of-things.ts";
import { worded } from "../property.ts";

/** Copper or aluminium, of the cable that is named, else of the circuit's. */
export const conductorMaterial = worded(
  "conductor-material",
  "material of the conductors",
  CONDUCTOR_MATERIALS,
  (spoken) =>
    ofCable(
      spoken,
      (section) => section.material,
      (cable) => cable.material,
    ),
);
