import { ofCircuit } from "../of-things.ts";
import { quantity } from "../property.ts";

/** Cross-section of the circuit's protective conductor. */
export const cpcSize = quantity("cpc-size", "size of the protective conductor", "square-millimetre", (spoken) =>
  ofCircuit(spoken, ({ cable }) => cable.cpc),
);
