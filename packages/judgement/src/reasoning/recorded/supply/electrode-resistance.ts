import { ofSupply } from "../of-things.ts";
import { quantity } from "../property.ts";

/** Resistance of the earth electrode as measured. 200 Ω is where it counts as one that may not stay (411.5.3, note). */
export const electrodeResistance = quantity(
  "electrode-resistance",
  "resistance of the earth electrode",
  "ohm",
  (spoken) => ofSupply(spoken, ({ ra }) => ra),
  [
    { value: "up-to-200-ohm", upTo: 200 },
    { value: "over-200-ohm", upTo: Number.POSITIVE_INFINITY },
  ],
);
