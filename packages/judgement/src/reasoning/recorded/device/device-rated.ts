import { ofCircuit } from "../of-things.ts";
import { quantity } from "../property.ts";

/** The rated current of the circuit's fuse or breaker. 32 A and 63 A are limits of what edition and topics ask. */
export const deviceRated = quantity(
  "device-rated",
  "rated current of the protective device",
  "ampere",
  (spoken) => ofCircuit(spoken, ({ device }) => device.rated),
  [
    { value: "up-to-32-a", upTo: 32 },
    { value: "up-to-63-a", upTo: 63 },
    { value: "over-63-a", upTo: Number.POSITIVE_INFINITY },
  ],
);
