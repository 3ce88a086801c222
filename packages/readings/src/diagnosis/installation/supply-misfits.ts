import { isAtOrigin } from "@good-grounds/computations";
import type { Misfit } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { systemMisfit } from "./earthing-system-misfit.ts";
import { electrodeMisfit } from "./electrode-misfit.ts";
import { currentMisfits } from "./fault-current-misfits.ts";
import { loopAtBoard } from "./origin-loop-misfit.ts";

/** The misfits among the readings of the origin, and of the boards' fault currents. */
export function supplyMisfits(installation: Installation): readonly Misfit[] {
  const { supply, boards } = installation;
  return [
    ...boards.map((board) => (isAtOrigin(board) ? loopAtBoard(supply, board) : undefined)),
    electrodeMisfit(supply),
    systemMisfit(supply),
    ...currentMisfits(installation),
  ].flatMap((one) => one ?? []);
}
