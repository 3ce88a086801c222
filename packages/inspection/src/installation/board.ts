import { fact, factNotKnown, type Path, TERM } from "@good-grounds/core";
import { BOARD_READINGS } from "../fields/board-readings.ts";
import { leavesOf } from "../fields/field.ts";
import type { Leaves } from "../fields/leaves.ts";
import { MATTER } from "../fields/matters.ts";
import type { DraftFile } from "../schema/draft.ts";
import { resolveCircuit } from "./circuit.ts";
import { boardResidual } from "./device.ts";
import { listed } from "./listed.ts";
import type { Board, Circuit, ConditionalRating } from "./model.ts";
import { phases } from "./phases.ts";

type BoardEntry = NonNullable<DraftFile["boards"]>[number];

/** What is known beside the entry of a board itself. */
interface Around {
  /** Finds the circuit that feeds it, which may stand in a board further on. */
  readonly circuitById: (board: string, circuit: string) => Circuit | undefined;
  /** Whether some of its circuits could not be read. */
  readonly isShort: boolean;
}

/** A board with its circuits. */
export function resolveBoard(
  leaves: Leaves,
  file: DraftFile,
  entry: BoardEntry,
  path: Path,
  { circuitById, isShort }: Around,
): Board {
  const { fedFrom } = entry;
  const circuits: Circuit[] = [];
  const board: Board = Object.freeze({
    ...leavesOf(BOARD_READINGS, leaves, entry.readings, [...path, "readings"]),
    path,
    id: entry.id,
    name: entry.name ?? "",
    get feeder() {
      return fedFrom === undefined || fedFrom === "supply" ? undefined : circuitById(fedFrom.board, fedFrom.circuit);
    },
    atOrigin:
      fedFrom === undefined
        ? factNotKnown(MATTER.atOrigin, [...path, "fedFrom"])
        : fact(MATTER.atOrigin, fedFrom === "supply", [...path, "fedFrom"]),
    circuitsListed: listed(MATTER.circuitsListed, entry.circuits !== undefined && !isShort, [...path, "circuits"]),
    phases: phases(leaves, entry.phases, [...path, "phases"]),
    enclosure: leaves.fact(MATTER.boardEnclosure, entry.enclosure, [...path, "enclosure"]),
    mainSwitchFitted: leaves.fact(MATTER.mainSwitchFitted, entry.mainSwitch?.fitted, [...path, "mainSwitch", "fitted"]),
    mainSwitchPoles: leaves.fact(MATTER.mainSwitchPoles, polesOf(entry), [...path, "mainSwitch", "poles"]),
    rcdsListed: leaves.fact(MATTER.rcdsListed, rcdsListedIn(entry), [...path, "rcds"]),
    rcds: Object.freeze((entry.rcds ?? []).map((rcd, i) => boardResidual(leaves, rcd, [...path, "rcds", i]))),
    mainSwitchRated: leaves.quantity(TERM.ratedSwitch, entry.mainSwitch?.rated, [...path, "mainSwitch", "rated"]),
    conditionalRating: conditionalRating(leaves, entry, path),
    circuits,
  });
  for (const [i, circuit] of (entry.circuits ?? []).entries())
    circuits.push(resolveCircuit(leaves, file, board, circuit, [...path, "circuits", i]));
  Object.freeze(circuits);
  return board;
}

function polesOf({ mainSwitch }: BoardEntry): "1" | "2" | "3" | "4" | undefined {
  const poles = mainSwitch?.poles;
  return poles === 1 ? "1" : poles === 2 ? "2" : poles === 3 ? "3" : poles === 4 ? "4" : undefined;
}

function rcdsListedIn({ rcds }: BoardEntry): "none" | "one" | "several" | undefined {
  if (rcds === undefined) return undefined;
  return rcds.length === 0 ? "none" : rcds.length === 1 ? "one" : "several";
}

function conditionalRating(leaves: Leaves, entry: BoardEntry, board: Path): ConditionalRating | undefined {
  const rating = entry.conditionalRating;
  if (rating === undefined) return undefined;
  const path: Path = [...board, "conditionalRating"];
  return Object.freeze({
    path,
    value: leaves.quantity(TERM.conditionalRating, rating.value, [...path, "value"]),
    upstreamStandard: leaves.fact(MATTER.deviceStandard, rating.upstream?.standard, [...path, "upstream", "standard"]),
    upstreamRated: leaves.quantity(TERM.ratedCurrent, rating.upstream?.rated, [...path, "upstream", "rated"]),
    devicesOfOneMake: leaves.fact(MATTER.oneMake, rating.devicesOfOneMake, [...path, "devicesOfOneMake"]),
  });
}
