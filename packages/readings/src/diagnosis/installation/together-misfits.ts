import type { Misfit } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { insulationTogether } from "./board-insulation-misfit.ts";
import { neutralsMisfit } from "./neutrals-misfit.ts";

/** Readings of whole boards against those of their circuits, and neutrals that are not apart. */
export function togetherMisfits({ boards }: Installation): readonly Misfit[] {
  return boards
    .flatMap((board) => [
      insulationTogether(
        board,
        board.insulationLiveEarth,
        (circuit) => circuit.readings.insulationLiveEarth,
        "live conductors to earth",
      ),
      insulationTogether(
        board,
        board.insulationLiveLive,
        (circuit) => circuit.readings.insulationLiveLive,
        "line to neutral",
      ),
      neutralsMisfit(board),
    ])
    .flatMap((one) => one ?? []);
}
