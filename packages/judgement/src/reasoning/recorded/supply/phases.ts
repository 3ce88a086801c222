import type { Fact } from "@good-grounds/core";
import type { SpokenOf } from "../../spoken-of/index.ts";
import { type Leaf, worded } from "../property.ts";

/** Number of phases of the circuit spoken of, else of its board, else of the supply. */
export const phases = worded("phases", "number of phases", ["1", "3"], phasesOf);

export function phasesOf({ circuit, board, place, installation }: SpokenOf): readonly Leaf<Fact<"1" | "3">>[] {
  if (circuit !== undefined) return [[circuit.path, circuit.phases]];
  if (place.circuit !== undefined) return [];
  if (board !== undefined) return [[board.path, board.phases]];
  return place.board === undefined ? [[installation.supply.path, installation.supply.phases]] : [];
}
