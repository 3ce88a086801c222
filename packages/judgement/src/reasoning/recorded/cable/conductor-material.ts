import { CONDUCTOR_MATERIALS } from "@good-grounds/core";
import { ofCircuit } from "../of-things.ts";
import { worded } from "../property.ts";

/** Copper or aluminium. */
export const conductorMaterial = worded(
  "conductor-material",
  "material of the conductors",
  CONDUCTOR_MATERIALS,
  (spoken) => ofCircuit(spoken, ({ cable }) => cable.material),
);
