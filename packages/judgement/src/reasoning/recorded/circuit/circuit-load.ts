import { CIRCUIT_LOADS } from "@good-grounds/core";
import { ofCircuit } from "../of-things.ts";
import { worded } from "../property.ts";

/** What the circuit mainly supplies. */
export const circuitLoad = worded("circuit-load", "what the circuit supplies", CIRCUIT_LOADS, (spoken) =>
  ofCircuit(spoken, ({ load }) => load),
);
