import { ofBonds } from "../of-things.ts";
import { quantity } from "../property.ts";

/** Cross-section of the bonding conductor. */
export const bondSize = quantity("bond-size", "size of the bonding conductor", "square-millimetre", (spoken) =>
  ofBonds(spoken, ({ size }) => size),
);
