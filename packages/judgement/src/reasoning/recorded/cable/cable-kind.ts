import { CABLE_KINDS } from "@good-grounds/core";
import { ofCable } from "../of-things.ts";
import { worded } from "../property.ts";

/** The construction of the cable that is named, else of the circuit's. */
export const cableKind = worded("cable-kind", "kind of cable", CABLE_KINDS, (spoken) =>
  ofCable(
    spoken,
    (section) => section.cable,
    (cable) => cable.kind,
  ),
);
