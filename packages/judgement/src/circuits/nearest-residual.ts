import {
  type Evidence,
  type Fact,
  fact,
  factNotKnown,
  isKnownFact,
  notKnown,
  type RcdDelay,
  TERM,
} from "@good-grounds/core";
import { type Circuit, MATTER, type ResidualDevice } from "@good-grounds/inspection";

/** The RCD nearest to a circuit, looking towards the origin, and whether there is any. */
export interface NearestResidual {
  readonly present: Fact<boolean>;
  readonly residual: Evidence<"ampere">;
  readonly delay: Fact<RcdDelay>;
}

/**
 * An RCD in the circuit, in its board, or ahead of a circuit that feeds its board. Known to be absent only where every
 * step to the origin says so; one step that was not looked at leaves it open, unless a device is found further on.
 */
export function nearestResidual(circuit: Circuit): NearestResidual {
  let open: Fact<boolean> | undefined;
  for (let at: Circuit | undefined = circuit; at !== undefined; at = at.board.feeder) {
    const [device] = at.residual.devices;
    if (device !== undefined) return of(device, fact(MATTER.rcdPresent, true, device.path));
    if (!isKnownFact(at.residual.present)) open ??= at.residual.present;
  }
  const path = [...circuit.path, "rcd"];
  return {
    present: open ?? fact(MATTER.rcdPresent, false, path),
    residual: notKnown(TERM.residualOperatingCurrent, path),
    delay: factNotKnown(MATTER.rcdDelay, path),
  };
}

function of(device: ResidualDevice, present: Fact<boolean>): NearestResidual {
  return { present, residual: device.residual, delay: device.delay };
}
