import { type Evidence, notKnown, TERM } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";

/** Rated residual operating current of the RCD nearest to the circuit; not known where none is recorded. */
export function nearestResidualCurrent(circuit: Circuit): Evidence<"ampere"> {
  return circuit.residual.devices[0]?.residual ?? notKnown(TERM.residualOperatingCurrent, [...circuit.path, "rcd"]);
}
