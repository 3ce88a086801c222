import { Leaves } from "../fields/leaves.ts";
import type { InspectionFile } from "../schema/file.ts";
import { resolveBoard } from "./board.ts";
import type { Circuit, Installation } from "./model.ts";
import { resolveThings } from "./resolve-things.ts";
import { resolveSupply } from "./supply.ts";

/** Resolves a parsed inspection file. The file must have passed the parser; references are trusted here. */
export function resolveInstallation(file: InspectionFile): Installation {
  const leaves = new Leaves(file.instruments);
  const byId = new Map<string, Circuit>();
  const boards = file.boards.map((entry, i) => {
    const board = resolveBoard(leaves, file, entry, ["boards", i], (at, circuit) => byId.get(`${at} ${circuit}`));
    for (const circuit of board.circuits) byId.set(`${board.id} ${circuit.id}`, circuit);
    return board;
  });
  return Object.freeze({
    file,
    edition: file.edition,
    supply: resolveSupply(leaves, file.supply),
    boards,
    circuits: Object.freeze(boards.flatMap(({ circuits }) => circuits)),
    things: resolveThings(leaves, file),
  });
}
