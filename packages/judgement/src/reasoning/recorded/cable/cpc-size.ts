import { ofCable } from "../of-things.ts";
import { quantity } from "../property.ts";

/** Cross-section of the protective conductor of the cable that is named, else of the circuit's. */
export const cpcSize = quantity("cpc-size", "size of the protective conductor", "square-millimetre", (spoken) =>
  ofCable(
    spoken,
    (section) => section.cpc,
    (cable) => cable.cpc,
  ),
);
