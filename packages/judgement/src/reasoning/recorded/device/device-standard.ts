import { DEVICE_STANDARDS } from "@good-grounds/core";
import { ofCircuit } from "../of-things.ts";
import { worded } from "../property.ts";

/** The product standard of the circuit's fuse or breaker. */
export const deviceStandard = worded(
  "device-standard",
  "standard of the protective device",
  DEVICE_STANDARDS,
  (spoken) => ofCircuit(spoken, ({ device }) => device.standard),
);
