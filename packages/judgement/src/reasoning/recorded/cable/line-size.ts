import { ofCircuit } from "../of-things.ts";
import { quantity } from "../property.ts";

/** Cross-section of the circuit's line conductor. */
export const lineSize = quantity("line-size", "size of the line conductor", "square-millimetre", (spoken) =>
  ofCircuit(spoken, ({ cable }) => cable.line),
);
