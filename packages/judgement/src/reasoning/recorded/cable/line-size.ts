import { ofCable } from "../of-things.ts";
import { quantity } from "../property.ts";

/** Cross-section of the line conductor of the cable that is named, else of the circuit's. */
export const lineSize = quantity("line-size", "size of the line conductor", "square-millimetre", (spoken) =>
  ofCable(
    spoken,
    (section) => section.line,
    (cable) => cable.line,
  ),
);
