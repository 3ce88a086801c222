import { ofCircuit } from "../of-things.ts";
import { stated } from "../property.ts";

/** Whether the circuit has socket-outlets. */
export const socketOutlets = stated("socket-outlets", "socket-outlets on the circuit", (spoken) =>
  ofCircuit(spoken, (circuit) => circuit.socketOutlets),
);
