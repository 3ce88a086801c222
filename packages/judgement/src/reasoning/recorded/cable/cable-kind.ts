import { CABLE_KINDS } from "@good-grounds/core";
import { ofCircuit } from "../of-things.ts";
import { worded } from "../property.ts";

/** The construction of the circuit's cable. */
export const cableKind = worded("cable-kind", "kind of cable", CABLE_KINDS, (spoken) =>
  ofCircuit(spoken, ({ cable }) => cable.kind),
);
