import { ofSupply } from "../of-things.ts";
import { quantity } from "../property.ts";

/** External earth fault loop impedance as measured. */
export const externalImpedance = quantity("external-impedance", "external loop impedance", "ohm", (spoken) =>
  ofSupply(spoken, ({ ze }) => ze),
);
