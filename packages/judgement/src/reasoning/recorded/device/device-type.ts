import { DEVICE_TYPES } from "@good-grounds/core";
import { ofCircuit } from "../of-things.ts";
import { worded } from "../property.ts";

/** The type of the circuit's fuse or breaker as marked. */
export const deviceType = worded("device-type", "type of the protective device", DEVICE_TYPES, (spoken) =>
  ofCircuit(spoken, ({ device }) => device.type),
);
