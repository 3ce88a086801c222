import { type Evidence, type Fact, factNotKnown, notKnown, type RcdDelay, TERM } from "@good-grounds/core";
import { type Circuit, MATTER } from "@good-grounds/inspection";

/** Rated residual operating current of the RCD nearest to the circuit; not known where none is recorded. */
export function nearestResidualCurrent(circuit: Circuit): Evidence<"ampere"> {
  return circuit.residual.devices[0]?.residual ?? notKnown(TERM.residualOperatingCurrent, [...circuit.path, "rcd"]);
}

/** Delay of the RCD nearest to the circuit; not known where none is recorded. */
export function nearestResidualDelay(circuit: Circuit): Fact<RcdDelay> {
  return circuit.residual.devices[0]?.delay ?? factNotKnown(MATTER.rcdDelay, [...circuit.path, "rcd"]);
}
