import { ofSupply } from "../of-things.ts";
import { quantity } from "../property.ts";

/** Cross-section of the earthing conductor. */
export const earthingConductorSize = quantity(
  "earthing-conductor-size",
  "size of the earthing conductor",
  "square-millimetre",
  (spoken) => ofSupply(spoken, ({ earthingConductor }) => earthingConductor.size),
);
