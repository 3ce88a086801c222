import { CIRCUIT_SHAPES } from "@good-grounds/core";
import { ofCircuit } from "../of-things.ts";
import { worded } from "../property.ts";

/** Ring, radial or distribution. */
export const circuitShape = worded("circuit-shape", "shape of the circuit", CIRCUIT_SHAPES, (spoken) =>
  ofCircuit(spoken, ({ shape }) => shape),
);
