import {
  type Evidence,
  type Fact,
  factNotKnown,
  isKnownFact,
  notKnown,
  type RcdDelay,
  type RcdStandard,
  TERM,
} from "@good-grounds/core";
import { type Circuit, MATTER } from "@good-grounds/inspection";

/** The RCD nearest to a circuit, looking towards the origin, and whether there is any. */
export interface NearestResidual {
  readonly present: Fact<boolean>;
  readonly residual: Evidence<"ampere">;
  readonly standard: Fact<RcdStandard>;
  readonly delay: Fact<RcdDelay>;
}

/**
 * An RCD in the circuit, in its board, or ahead of a circuit that feeds its board. Known to be absent only where every
 * step to the origin says so; one step that was not looked at leaves it open, unless a device is found further on.
 */
export function nearestResidual(circuit: Circuit): NearestResidual {
  let open: Fact<boolean> | undefined;
  for (let at: Circuit | undefined = circuit; at !== undefined; at = at.board.feeder) {
    const { present, devices } = at.residual;
    const [device] = devices;
    if (device !== undefined)
      return { present, residual: device.residual, standard: device.standard, delay: device.delay };
    if (!isKnownFact(present)) open ??= present;
  }
  return { present: open ?? circuit.residual.present, residual: NO_CURRENT, standard: NO_STANDARD, delay: NO_DELAY };
}

const NO_CURRENT = notKnown(TERM.residualOperatingCurrent, ["rcd"]);
const NO_STANDARD = factNotKnown(MATTER.rcdStandard, ["rcd"]);
const NO_DELAY = factNotKnown(MATTER.rcdDelay, ["rcd"]);
